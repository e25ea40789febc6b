export { type QuestionPicture, questionPictureOf } from './question-picture.tsx';
