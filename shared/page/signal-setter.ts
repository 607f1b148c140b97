/** What a field or a switch hands over becomes the value of this signal as it is. */
export function setterOf<Value>(signal: { value: Value }): (value: Value) => void {
  return (value) => {
    signal.value = value;
  };
}
