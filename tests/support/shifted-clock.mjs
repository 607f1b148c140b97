/**
 * Sets the clock on the wall of this process or page apart from the machine's by so many ms, also when it was apart
 * before; what counts from any other moment (`performance.now`, timers) stays. It leans on nothing beside it, so that it
 * can be sent into a page as well.
 *
 * @param {number} by ms, negative for back
 */
export function shiftClock(by) {
  const Real = Date;
  const machines = Symbol.for("the machine's own clock");
  const shiftedBefore = machines in Real;
  const real = shiftedBefore ? Real[machines] : Real.now.bind(Real);
  Real[machines] = real;
  Real.now = () => real() + by;
  if (shiftedBefore) return;
  const Shifted = new Proxy(Real, {
    apply: () => new Real(Real.now()).toString(),
    construct: (target, given, asked) =>
      Reflect.construct(
        target,
        given.length === 0 ? [Real.now()] : given,
        asked === Shifted ? target : asked,
      ),
  });
  Real.prototype.constructor = Shifted;
  globalThis.Date = Shifted;
}
