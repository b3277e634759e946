import fc from 'fast-check';

/**
 * Random properties are tried on the same values in each run of `npm test`, so that what passes here passes anywhere.
 * `PULSE_MAP_SEED=random` draws new ones; a failure then prints its own seed.
 */
const given = process.env['PULSE_MAP_SEED'] ?? '20261126';
if (given !== 'random') fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(given) });
