import { groundHandlers } from './ground-handlers.ts';
import { serve } from './serve.ts';

serve(groundHandlers);
