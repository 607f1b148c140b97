/**
 * How far a call of this server reaches. `network`: devices of one network only. `public`: devices also learn the address under
 * which others reach them, which most homes let through. `relay`: where nothing else passes, a relay passes it on.
 */
export type CallReach = 'network' | 'public' | 'relay';
