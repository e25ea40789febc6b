export { SymptomDrawing } from './symptom-drawing.tsx';
