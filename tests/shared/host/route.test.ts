import { describe, expect, it } from 'vitest';
import { hrefOf, routeOf } from '../../../host/route.ts';

describe('addresses of the host', () => {
  it('tell which part of the plan is open, so that the way back of the browser leads through them', () => {
    const opened = routeOf('#/t/evening/plan/shopping');
    expect(opened).toEqual({ page: 'plan', tasting: 'evening', part: 'shopping' });
    expect(hrefOf(opened)).toBe('#/t/evening/plan/shopping');
    expect(routeOf('#/t/evening/plan')).toEqual({ page: 'plan', tasting: 'evening', part: undefined });
    expect(hrefOf(routeOf('#/t/evening/plan'))).toBe('#/t/evening/plan');
  });

  it.each(['#/t/evening/planned', '#/t/evening/plan/Shopping', '#/t/evening/plan/a/b', '#/t//plan', ''])(
    '%s leads home',
    (address) => {
      expect(routeOf(address)).toEqual({ page: 'home' });
    },
  );
});
