export { type BankSubject, type DrawOptions, drawExercises, readBank } from './bank.ts'
export type { DrawnId } from './drawn/drawn.ts'
export {
  type DrawnTexts,
  type DrawnWords,
  drawnTexts,
  type LoopFaultTexts,
  loopFaultTexts,
} from './drawn/drawn-text.table.ts'
export { moodleXml } from './exchange/moodle.ts'
export { qtiItem, qtiPackage } from './exchange/qti.ts'
export type { QtiVersion } from './exchange/qti-dialect.table.ts'
export type {
  Choice,
  Distractor,
  DrawnExercise,
  Exercise,
  ExerciseCore,
  ExerciseItem,
  Given,
  JudgementExercise,
  Misconception,
  NumberExercise,
  NumberKey,
  Statement,
  Tolerance,
} from './exercise.ts'
export { exerciseItem, type ItemOptions, variantsOf } from './exercise-item.ts'
export {
  type ExerciseSheet,
  exerciseSheets,
  exerciseVersion,
  type SheetRecord,
  type SheetSet,
  sheetsAgain,
} from './exercise-sheet.ts'
export { type ExerciseTexts, exerciseTexts } from './exercise-text.table.ts'
export { type Mark, markAnswer } from './mark-answer.ts'
export { type ReadExerciseOptions, readExercise } from './read-exercise.ts'
export { type SheetStyle, sheetChapter } from './sheet-chapter.ts'
export { sheetsCsv } from './sheet-csv.ts'
