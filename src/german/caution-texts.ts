import type { CourseLanguage } from '../course/index.ts'

/** The cautions in German. They say what the English ones say, no more and no less. */
export const germanCautions: CourseLanguage['cautions'] = {
  always:
    'Dieses Ergebnis hilft ausgebildeten Menschen. Es ersetzt weder die Betriebsanleitung des Herstellers noch die Behörde, die für das Gerät zuständig ist, noch zugelassene Prüfer, Füller und Techniker, noch die Ausbildung.',
  'fill-limit':
    'Wie weit eine Flasche gefüllt werden darf, bestimmen die Kennzeichnung, die örtlichen Vorschriften und die Regeln der Füllanlage. Weichen sie von dieser Zahl ab, gilt der niedrigere Druck.',
  overfill:
    'Eine Flasche, die über das hinaus gefüllt ist, was ihre Kennzeichnung erlaubt, muss von einer ausgebildeten Person auf den zulässigen Druck abgelassen werden; wiederholtes Überfüllen verkürzt ihr Leben und kann es bei der nächsten Prüfung beenden.',
  'plus-mark':
    'Ein Pluszeichen ist eine Entscheidung der Prüfstelle und wird bei jeder wiederkehrenden Prüfung neu getroffen. Eine Rechnung kann zeigen, dass Bedingungen erfüllt sind, nie, dass das Zeichen verdient ist.',
  'hot-fill':
    'Gas wird beim Füllen warm, und der Druck fällt, wenn es abkühlt. Eine warme Ablesung sagt nichts über den abgekühlten Druck, solange die Temperatur des Gases nicht bekannt ist.',
  'oxygen-handling':
    'Sauerstoff und sauerstoffreiche Gemische entzünden Stoffe, die in Luft nicht brennen. Nur mit gereinigten und für Sauerstoff zugelassenen Teilen umgehen, langsam geöffnet, von ausgebildeten Personen.',
  'analyse-mixture':
    'Jedes Gemisch wird vor dem Gebrauch von der Person analysiert, die es atmen wird. Eine berechnete Zusammensetzung ist ein Plan, keine Analyse.',
  'residual-helium':
    'Helium, das in einer Flasche bleibt, macht aus dem Gemisch ein anderes Gas, als sein Sauerstoff allein verrät: auch auf Helium analysieren und nicht als Nitrox verwenden.',
  'oxygen-limits':
    'Zu viel und zu wenig Sauerstoff töten ohne Warnung. Grenzen des Sauerstoffpartialdrucks kommen aus der Ausbildung und den örtlichen Regeln; hier wird nur mit ihnen gerechnet.',
  'gas-density':
    'Dichtes Gas lässt Kohlendioxid ansteigen, und auch unter der Grenze kann es zurückgehalten werden: Schwere Arbeit, ein schlechter Atemregler und der Mensch entscheiden. Veröffentlichte Empfehlungen zur Dichte sind Grenzen für die Planung, nicht für das Wohlbefinden.',
  requalification:
    'Die Prüffrist bestimmt die Behörde, die für die Flasche, ihre Zulassung und ihre Verwendung zuständig ist; die Stempelung allein tut es nicht. Schäden, Korrosion, Hitze oder Zweifel ziehen die Prüfung auf heute vor.',
  'stamp-reading':
    'Eine Stempelung zu lesen ist keine Prüfung. Wo sie unklar ist, verändert wurde oder sich widerspricht, die Flasche aus dem Verkehr ziehen und eine zugelassene Prüfstelle fragen.',
  inspection:
    'Nur eine zugelassene Prüfstelle darf eine Flasche freigeben oder aussondern. Ein hier beschriebener Befund ist ein Grund, sie aus dem Verkehr zu ziehen und zu fragen, nie ein Grund, sie weiter zu benutzen.',
  'rust-oxygen':
    'Gas aus einer nassen oder lange gelagerten Stahlflasche kann seinen Sauerstoff verloren haben. Vor dem Atmen analysieren.',
  'valve-connection':
    'Einen Anschluss nie erzwingen oder anpassen. Ein Ventilanschluss, der nicht von Hand passt, ist der falsche; eine Verschraubung unter Druck darf nie gelöst werden.',
  regulator:
    'Eine berechnete oder gemessene Zahl zu einem Atemregler gilt nur für ihre Prüfbedingungen. Einstellung und Instandsetzung gehören der Betriebsanleitung des Herstellers und einer befähigten Person.',
  'regulator-cold':
    'Ein Abstand zum Gefrieren ist kein Versprechen. Kaltwasser verlangt Geräte, die der Hersteller dafür nennt, Ausbildung und einen Ausweg, wenn es doch vereist.',
  reserve:
    'Eine berechnete Reserve beruht auf einem gleichmäßigen Verbrauch. Anstrengung, Kälte, Strömung und ein zweiter Taucher erhöhen ihn; die Regeln der Ausbildung und des Orts gehen vor, und die größere Reserve gilt.',
  warmth:
    'Berechnete Wärmedämmung und Wärmeverluste vergleichen Anzüge und Gase. Passform, durchströmendes Wasser, nasses Unterzeug, das Alter des Anzugs, die Arbeit und der Mensch bestimmen, wie kalt einem Taucher wird; keine Zahl hier sagt, wie lange jemand bleiben kann.',
  'no-decompression-planning':
    'Hier wird keine Dekompression geplant. Das Gas für einen Aufstieg wird für den Aufstieg gezählt, der angegeben wird.',
  buoyancy:
    'Ein berechneter Ballast ist der Ausgangspunkt für eine Probe im Wasser, mit fast leeren Flaschen auf dem flachsten Halt.',
  'breathing-air':
    'Atemluft wird durch die Analyse eines fachkundigen Labors nach der örtlich geltenden Regel beurteilt. Grenzwerte verschiedener Regeln dürfen nicht gemischt werden.',
  'carbon-monoxide':
    'Aktivkohle und Molekularsieb lassen Kohlenmonoxid durch; nur ein trocken gehaltener Katalysator und eine Ansaugung in reiner Luft halten es fern. Es hat keinen Geruch: Nur eine Analyse findet es.',
  'breathing-loop':
    'Ein Atemkreislauf warnt nicht, bevor zu wenig Sauerstoff, zu viel davon oder Kohlendioxid das Bewusstsein nimmt. Ein berechneter Sauerstoffanteil ersetzt keine Sauerstoffzelle, und die Aufnahme eines Atemkalks gilt nur für ihre Prüfbedingungen.',
  'altitude-pressure':
    'Die Normatmosphäre ist nicht das Wetter: Der wirkliche Luftdruck weicht um etwa drei Prozent ab. Wo es darauf ankommt, messen.',
  instrument:
    'Ein Messgerät ist nur so gut wie seine letzte Prüfung. Ein Anzeigewert nahe einer Grenze gilt als jenseits von ihr.',
}

/** Titles of sources that are no publications, in German. */
export const germanSources: CourseLanguage['sources'] = {
  'common-practice': 'Übliche Praxis des Fachs, ohne Dokument',
  'litrebar-derivation':
    'In diesem Projekt aus genannten Annahmen hergeleitet, in den Tests auf einem zweiten Weg geprüft',
  'decreto-italia-2001': 'Italienische Regeln für Atemflaschen: D.Lgs. 93/2000, DM 329/2004 Anhang B',
  memory: 'Aus dem Gedächtnis, ohne Dokument; vor dem Gebrauch nachprüfen',
}
