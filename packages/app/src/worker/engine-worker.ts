import { engineHandlers } from './engine-handlers.ts';
import { serve } from './serve.ts';

serve(engineHandlers);
