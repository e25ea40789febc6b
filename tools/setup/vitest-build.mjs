import { bundle } from './bundle.mjs';

/** Tests that run the command line run today's code. */
export async function setup() {
  await bundle();
}
