import fc from 'fast-check';

/**
 * Property tests run from one seed, so that a red run is red for everybody and a green one is no luck.
 * PROPERTY_SEED=… tries another; a counterexample stops shrinking after a minute and is shown as far as it got.
 */
fc.configureGlobal({
  seed: Number(process.env['PROPERTY_SEED'] ?? 20261125),
  interruptAfterTimeLimit: 100_000,
  markInterruptAsFailure: true,
});
