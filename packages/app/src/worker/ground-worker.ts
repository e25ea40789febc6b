import { groundHandlers } from './ground-handlers.ts';
import type { Handlers } from './protocol.ts';
import { serve } from './serve.ts';

serve((kind) => (groundHandlers as Handlers)[kind]);
