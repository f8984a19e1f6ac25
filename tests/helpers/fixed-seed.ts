import fc from 'fast-check';

/** Each run draws the same cases, so that what fails once fails again; DAMLINE_SEED=2 draws others. */
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(process.env.DAMLINE_SEED ?? 1) });
