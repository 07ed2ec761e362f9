import fc from 'fast-check'

// Property tests draw the same examples on every machine and every run, so that a red run is a change's own doing.
// MARRAM_SEED=<number> draws others.
fc.configureGlobal({ seed: Number(process.env.MARRAM_SEED ?? 1) })
