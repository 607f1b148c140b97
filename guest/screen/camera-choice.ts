/** Kept in the address, so that after a reload it is the camera of the table again. */
export const isCamera = (): boolean => new URLSearchParams(window.location.search).has('camera');

export function chooseCamera(on: boolean): void {
  const { href } = window.location;
  const address = new URL(href);
  if (on) address.searchParams.set('camera', '');
  else address.searchParams.delete('camera');
  history.replaceState(null, '', address);
}
