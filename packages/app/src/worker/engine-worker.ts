import { engineHandler } from './engine-handlers.ts';
import { serve } from './serve.ts';

serve(engineHandler);
