import type { CourseLanguage, ExerciseTexts } from '../course/index.ts'
import { germanFigures } from './figure-texts.ts'

/** The fixed texts of exercises in German. */
export const germanExercises: ExerciseTexts = {
  answerIn: 'Antwort in {unit}, auf {figures} signifikante Stellen.',
  answerPure: 'Antwort als Zahl, auf {figures} signifikante Stellen.',
  chooseOne: 'Eine Antwort wählen.',
  chooseSeveral: 'Alles Zutreffende wählen.',
  sheet: 'Aufgaben',
  forStudent: 'Für {student}',
  reader: 'Zu jeder Zahl die Einheit schreiben. Einmal runden, am Ende.',
  teacher: 'Ausgabe für Lehrende: Lösungen, Toleranzen, häufige Fehler, Quellen.',
  exercise: 'Aufgabe {number}',
  answer: 'Antwort:',
  key: 'Lösung',
  tolerance:
    'Anerkannt: ± {total} (halbe Einheit der letzten Stelle {halfUnit}, Rundung unterwegs {rounding}, andere anerkannte Konstanten {conventions}).',
  commonErrors: 'Häufige Fehler',
  comesOut: '{answer}: {says}.',
  working: 'Rechenweg',
  record: 'Protokoll',
  recordOf: 'Startzahl {seed}, Version {version}.',
  right: 'richtig',
  wrong: 'falsch',
  correct: 'Richtig.',
}

const ask = 'Die Flasche aus dem Verkehr ziehen und eine zugelassene Prüfstelle fragen.'
const look = 'Die Flaschenschulter noch einmal ansehen, in schrägem Licht.'
const none = 'Nichts zu tun.'
const never = 'Nie füllen.'

/** The words of drawn questions in German, with the findings of stamps. */
export const germanDrawn: CourseLanguage['drawn'] = {
  figures: germanFigures,
  texts: {
    dueStamp:
      'Es ist {month}. Welche dieser Flaschen ist nach 49 CFR 180.209, fünf Jahre, zur wiederkehrenden Prüfung fällig?',
    dueOn: 'geprüft {tested}, fällig {due}.',
    dueStampWorking: 'Von jeder Schulter die letzte Prüfung nehmen, die Frist hinzuzählen und mit heute vergleichen.',
    shoulderFindings: 'Diese Schulter ist im November 2026 zu lesen. Welche Befunde hat sie?',
    notOnThis: 'Nichts auf dieser Schulter zeigt das.',
    loopFault:
      'Welche dieser Schleifen gehört zu diesem Fehler: {fault}? Drücke am Mund in mbar, bei 0, 25, 50, 75 und 100 % jeder Hälfte.',
    loop: 'Einatmung {inhaled}; Ausatmung {exhaled}',
    loopPicture: 'Diese Schleife hat ein Atemregler gezeichnet. Welchen Fehler zeigt sie?',
    loopPictureTitle: 'Druck am Mund über einen Atemzug',
    loopPictureName: 'die Schleife',
    loopPictureDescription:
      'Druck am Mund gegen das eingeatmete Volumen, in mbar bei 0, 25, 50, 75 und 100 % der Zeit jeder Hälfte: Einatmung {inhaled}; Ausatmung {exhaled}.',
  },
  faults: {
    'stiff-valve': {
      fault: 'ein Lungenautomat, der schwer öffnet',
      seen: 'Der Unterdruck ist vom ersten Augenblick an groß, und der Volumenstrom fügt so wenig hinzu wie sonst.',
    },
    'starved-valve': {
      fault: 'eine erste Stufe, die mit der Spitze des Volumenstroms nicht mitkommt',
      seen: 'Der Anfang ist wie sonst, und der Unterdruck wächst, wo der Volumenstrom am größten ist.',
    },
    'sticking-exhaust': {
      fault: 'ein Ausatemventil, das zu wenig öffnet',
      seen: 'Die Einatmung ist wie sonst, und der Druck der Ausatmung ist hoch.',
    },
    'strong-assist': {
      fault: 'eine Injektorwirkung, die das Ventil zu weit treibt',
      seen: 'Der Druck steigt über die Umgebung, während der Taucher einatmet.',
    },
  },
  findings: {
    'unknown-specification': { text: 'Keine Bauvorschrift oder Norm dieses Namens ist bekannt.', remedy: look },
    'missing-service-pressure': { text: 'Auf die Bauvorschrift folgt kein Druck.', remedy: look },
    'missing-unit': {
      text: 'Hinter dem Druck steht keine Einheit.',
      remedy: 'Die Regel will BAR hinter PH; es wurde bar angenommen.',
    },
    'missing-field': { text: 'Ein Zeichen, das Schultern dieser Familie tragen, wurde nicht gefunden.', remedy: look },
    'missing-prefix': { text: 'Vor der Bauvorschrift steht keine Behörde.', remedy: look },
    'invalid-month': { text: 'Diesen Monat gibt es nicht.', remedy: look },
    'invalid-number': { text: 'Das ist keine Zahl über null.', remedy: look },
    'invalid-date-order': {
      text: 'Das Jahr steht in dieser Familie vorn.',
      remedy: 'Prüfen, ob das Zeichen ursprünglich ist.',
    },
    'ambiguous-date': {
      text: 'Monat und Jahr lassen sich nicht unterscheiden; der Monat wurde vorn angenommen.',
      remedy: 'Ein anderes Datum auf der Schulter oder die Papiere können entscheiden.',
    },
    'month-first': {
      text: 'Der Monat steht vorn, wie manche Länder ihn stempeln; nach der Regel dieser Familie steht das Jahr vorn.',
      remedy: none,
    },
    'month-left-out': {
      text: 'Nur ein Jahr ist gestempelt: erlaubt, wo die Frist zehn Jahre oder länger ist.',
      remedy: 'Den Monat den Papieren entnehmen.',
    },
    'group-order': {
      text: 'Die Gruppen der Zeichen stehen in einer anderen Reihenfolge, als die Regel sie hat.',
      remedy: look,
    },
    'incomplete-rin': {
      text: 'Der Nummer einer Prüfstelle im Quadrat fehlt die zweite Zeile.',
      remedy: 'Im Uhrzeigersinn von oben links lesen: zwei Zeichen oben, zwei unten.',
    },
    'test-pressure-too-low': { text: 'Der Betriebsdruck ist mehr als zwei Drittel des Prüfdrucks.', remedy: ask },
    'wall-too-thin': {
      text: 'Eine Wand dieser Dicke könnte den Prüfdruck bei diesem Fassungsraum in keiner Form halten, die eine Flasche hat.',
      remedy: look,
    },
    'capacity-mass-mismatch': {
      text: 'Masse und Fassungsraum gehören nicht zusammen: zu wenig Metall für die Wand oder den Druck, oder viel zu viel.',
      remedy: 'Die Einheit prüfen: Pfund für Kilogramm, entspanntes Gas für Fassungsraum.',
    },
    'implausible-number': {
      text: 'Die Zahl liegt außerhalb dessen, was ein solches Zeichen sein kann.',
      remedy: 'Einheit und Dezimalzeichen prüfen.',
    },
    'pressure-withheld': {
      text: 'Die Zahl liegt außerhalb dessen, was die Bauart je hatte, und es wurde kein Druck aus ihr genommen.',
      remedy: look,
    },
    'conflicting-dual-pressure': {
      text: 'Die Drücke der beiden Behörden liegen weiter auseinander, als Rundung erklärt.',
      remedy: ask,
    },
    'dual-pressure-differs': {
      text: 'Die Drücke der beiden Behörden unterscheiden sich: auf diesen Bauarten üblich, wo ein Zeichen nahe dem Wert der zehn Prozent liegen kann.',
      remedy: 'Jede Behörde liest ihr eigenes Zeichen.',
    },
    'plus-not-allowed': {
      text: 'Diese Bauart steht nicht auf der Liste der Zehn-Prozent-Regel: 3A, 3AX, 3AA, 3AAX und 3T.',
      remedy: 'Das Plus zählt hier nicht; fragen, wer es gestempelt hat.',
    },
    'star-not-allowed': {
      text: 'Der Zehnjahresstern gehört nur zu 3A und 3AA.',
      remedy: 'Fünf Jahre zählen und fragen, wer ihn gestempelt hat.',
    },
    'eddy-current-on-steel': {
      text: 'Die Buchstaben einer Wirbelstromprüfung stehen auf einer Stahlflasche.',
      remedy: ask,
    },
    'retest-before-first-test': { text: 'Die Prüfung ist älter als die Herstellung der Flasche.', remedy: ask },
    'retests-out-of-order': { text: 'Die Prüfung ist älter als die vor ihr gestempelte.', remedy: look },
    'date-in-the-future': { text: 'Das Datum liegt nach dem Tag, nach dem gefragt wurde.', remedy: look },
    'date-may-be-expiry': {
      text: 'Die Daten können Ablaufdaten sein: Manche Länder schlagen sie statt des Prüfdatums ein.',
      remedy: 'Herausfinden, in welchem Land geprüft wurde, bevor von einem Datum an gezählt wird.',
    },
    'late-retest': {
      text: 'Die Prüfung kam, nachdem die vor ihr abgelaufen war. Kein Fehler der Stempelung: Niemand durfte die Flasche inzwischen füllen.',
      remedy: 'Nichts zu tun; die Frist zählt von der späten Prüfung an.',
    },
    'retest-kind-not-stamped': {
      text: 'Das Zeichen kam früh und sagt nicht, ob es eine volle oder eine innere Prüfung war.',
      remedy: 'Die Stelle fragen, die es gestempelt hat, oder das frühere als volle Prüfung nehmen.',
    },
    'us-retest-on-un': {
      text: 'Monat, RIN und Jahr: Eine US-Prüfstelle hat ein UN-Gefäß gestempelt.',
      remedy: none,
    },
    'square-rin': {
      text: 'Die Nummer der Prüfstelle steht in einem Quadrat und wurde im Uhrzeigersinn gelesen.',
      remedy: none,
    },
    'high-strength-steel': {
      text: 'Hochfester Stahl: Die US-Prüfung verlangt zusätzlich eine Ultraschallprüfung.',
      remedy: 'Der Prüfstelle sagen.',
    },
    'possible-6351': {
      text: 'Die Buchstaben der Wirbelstromprüfung und das Alter deuten auf die Legierung 6351-T6, die unter Dauerlast im Hals reißen kann.',
      remedy: 'Den Hals prüfen lassen, wie seine Regel es sagt; zwei Maßstäbe für Risse gelten nebeneinander.',
    },
    'possible-6351-one-maker': {
      text: 'Ein Hersteller verwendete die Legierung 6351-T6 bis Juli 1990: Das Alter lässt es offen.',
      remedy: 'Herausfinden, wer die Flasche hergestellt hat.',
    },
    'presumed-6351': {
      text: 'Nach Alter oder Herkunft gilt die Flasche als aus der Legierung 6351-T6, bis anderes gezeigt ist, und keine Wirbelstromprüfung ist gestempelt.',
      remedy: 'Vor der nächsten Füllung die Legierung feststellen oder den Hals prüfen lassen.',
    },
    'composite-without-uw': {
      text: 'Eine Verbundflasche zum Gebrauch unter Wasser muss UW tragen; diese tut es nicht.',
      remedy: 'Nicht unter Wasser verwenden.',
    },
    'date-is-next-due': {
      text: 'Das Datum liegt um eine Frist nach einer gestempelten Prüfung: Es wurde als Datum der nächsten gelesen.',
      remedy: 'Mit den Papieren der letzten Prüfung vergleichen.',
    },
    'material-not-stated': {
      text: 'Nichts sagt, woraus die Flasche ist.',
      remedy: 'Ein Magnet erkennt Stahl; das Übrige erkennt eine Prüfstelle.',
    },
    'pressure-not-labelled': {
      text: 'Zwei Drücke ohne Beschriftung: Der höhere wurde für den Prüfdruck genommen.',
      remedy: look,
    },
    condemned: { text: 'Die Flasche ist als ausgesondert oder außer Betrieb gekennzeichnet.', remedy: never },
    'life-ended': {
      text: 'Das gestempelte Ende ihrer Lebensdauer ist vorbei. Keine wiederkehrende Prüfung folgt; sie ist auszusondern.',
      remedy: never,
    },
    'two-families': {
      text: 'Zeichen zweier Familien stehen auf einer Schulter; nur die erste wurde gelesen.',
      remedy: 'Die andere für sich lesen.',
    },
    'century-assumed': {
      text: 'Zweistellige Jahre bekamen ein Jahrhundert, ohne einen Tag, von dem zu zählen wäre.',
      remedy: 'asOf angeben.',
    },
    'lower-case': { text: 'Kleine Buchstaben wurden als große gelesen.', remedy: none },
    'look-alike': { text: 'Ein Zeichen wurde als eines gelesen, das ihm ähnlich sieht.', remedy: look },
    separator: { text: 'Ein Zeichen wurde für einen Zwischenraum zwischen Marken genommen.', remedy: none },
    spacing: { text: 'Ein Zwischenraum wurde aus einer Marke genommen oder in eine gesetzt.', remedy: none },
    'line-break': { text: 'Eine Marke geht in der nächsten Zeile weiter.', remedy: look },
    'unread-figure': {
      text: 'Das sieht nach einem Datum oder einem Druck aus und wurde nicht gelesen.',
      remedy: 'Vorher lässt sich über die Flasche nichts sagen.',
    },
    'unread-text': { text: 'Das wurde als keine Marke gelesen.', remedy: look },
  },
}
