/**
 * Moves the clock on the wall of this process or page by so many ms; what counts from any other moment
 * (`performance.now`, timers) stays. It leans on nothing beside it, so that it can be sent into a page as well.
 *
 * @param {number} by ms, negative for back
 */
export function shiftClock(by) {
  const Real = Date;
  const real = Real.now.bind(Real);
  Real.now = () => real() + by;
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
