import fc from 'fast-check';

/** A mutant that lives or dies by luck says nothing about the tests. */
fc.configureGlobal({ seed: 20_260 });
