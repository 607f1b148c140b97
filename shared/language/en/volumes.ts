/** How a unit of volume is written behind its number, in English; on paper too, so apart from the plan's own words. */
export const volumeUnits = { ml: 'mL', 'fl-oz-us': 'fl\u00a0oz', 'fl-oz-imperial': 'fl\u00a0oz' };
