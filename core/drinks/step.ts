/** One walk through a glass. `review` and `reflect` belong to the closing pass. */
export type Pass = 'first' | 'writing' | 'closing';

/** One action of a pass. */
export type Step = 'swirl' | 'look' | 'nose' | 'sip' | 'spit' | 'write' | 'review' | 'reflect';

/** The moves that can be practised with plain water. */
export type Move = 'swirl' | 'look' | 'nose' | 'sip' | 'spit';

/** Where in the notebook the words of a writing step go. */
export type Sense = 'look' | 'nose' | 'palate' | 'finish';
