import { config } from 'zod';

// zod probes for `new Function`; the page's policy refuses it and would report each probe as a violation.
config({ jitless: true });
