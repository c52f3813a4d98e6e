import type { CourseLanguage } from '../course/index.ts'
import { germanCards } from './cards/all-card-texts.ts'
import { germanCautions, germanSources } from './caution-texts.ts'
import { germanDrawn, germanExercises } from './exercise-texts.ts'
import { germanFigures } from './figure-texts.ts'
import { germanPage, germanRoundings } from './page-texts.ts'
import { germanParts } from './reason-parts.ts'
import { germanReasonsOfTables } from './reason-table-texts.ts'
import { germanReasons } from './reason-texts.ts'

/**
 * German for everything that a reader of a page, of a sheet or of an item sees. The terms are those of German standards and
 * accident-prevention rules where one was read there: Druckgasflasche, Atemregler, Lungenautomat, Mitteldruck, Umgebungsdruck, Überdruck,
 * Druckmessgerät, Messabweichung, Verdichter, Lieferleistung, Füllanlage, Trockentauchanzug. From memory, without a document at hand:
 * entspanntes Gas (free gas), Fülleistung, Umkehrdruck, Atemarbeit, Atemminutenvolumen, Ansprechdruck, Schließdruckdifferenz, Realgasfaktor,
 * Liefergrad, Schadraum, Druckerhöher, Absolutdruck, kritisch durchströmt, Verdichtungsendtemperatur, Injektorwirkung, Kapillartiefenmesser.
 *
 * @source memory
 * @example
 * cardIn(boyleCard, german).title // => 'Gesetz von Boyle: Druck mal Volumen bleibt gleich'
 */
export const german: CourseLanguage = {
  tag: 'de',
  decimal: 'comma',
  page: germanPage,
  roundings: germanRoundings,
  cards: germanCards,
  cautions: germanCautions,
  sources: germanSources,
  exercises: germanExercises,
  drawn: germanDrawn,
  figures: germanFigures,
  reasons: { sentences: [...germanReasons, ...germanReasonsOfTables], parts: germanParts },
}
