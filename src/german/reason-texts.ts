/**
 * The reasons of verdicts and the findings about logs in German, each beside the English sentence that it stands for. `{a}` is what
 * is filled in: a figure, or words that stand in `germanParts`. The English stands here so that a reworded reason is noticed.
 */
export const germanReasons: readonly (readonly [english: string, german: string])[] = [
  // buoyancy
  [
    'The valve lets out at least what the inflator lets in.',
    'Das Ventil lässt mindestens so viel ab, wie der Inflator einlässt.',
  ],
  ['The inflator lets in more than the valve lets out.', 'Der Inflator lässt mehr ein, als das Ventil ablässt.'],
  [
    'The valve stays shut while the device is full and at rest.',
    'Das Ventil bleibt zu, solange das Gerät voll und in Ruhe ist.',
  ],
  ['The height of the bubble alone opens the valve.', 'Schon die Höhe der Gasblase öffnet das Ventil.'],
  // uncertainty
  [
    'The two results differ by no more than their uncertainties allow.',
    'Die beiden Ergebnisse unterscheiden sich nicht mehr, als ihre Unsicherheiten zulassen.',
  ],
  [
    'The two results differ by more than their uncertainties allow: one is wrong or its uncertainty too small.',
    'Die beiden Ergebnisse unterscheiden sich mehr, als ihre Unsicherheiten zulassen: Eines ist falsch oder seine Unsicherheit zu klein.',
  ],
  // compressor
  [
    'The final pressure is {a}: the other readings compare only at the same one.',
    'Der Enddruck ist {a}: Die anderen Ablesungen sind nur bei demselben vergleichbar.',
  ],
  ['Stage {a}: {b} high, {c}.', 'Stufe {a}: {b} hoch, {c}.'],
  ['Stage {a}: {b} low, {c}.', 'Stufe {a}: {b} niedrig, {c}.'],
  ['Stage {a}: {b} too near its bound to tell, {c}.', 'Stufe {a}: {b} zu nah an der Grenze, um es zu sagen, {c}.'],
  [
    'Stage {a}: {b} was not read, or nothing says what it should be.',
    'Stufe {a}: {b} wurde nicht abgelesen, oder nichts sagt, wie groß der Wert sein soll.',
  ],
  // filling line
  ['Up to {a} bar come through; {b} bar are allowed.', 'Bis zu {a} bar kommen durch; erlaubt sind {b} bar.'],
  [
    'Turned up, the panel lets in {a} bar: whoever fills decides.',
    'Aufgedreht lässt die Füllleiste {a} bar ein: Wer füllt, entscheidet.',
  ],
  [
    'The supply ends at {a} bar: the panel limits nothing.',
    'Die Versorgung endet bei {a} bar: Die Füllleiste begrenzt nichts.',
  ],
  [
    'The relief valve is open from {a} bar at the latest. It is no means of filling.',
    'Das Sicherheitsventil ist spätestens ab {a} bar offen. Zum Füllen ist es nicht da.',
  ],
  ['{a} ± {b} oxygen in the intake, at most {c}.', '{a} ± {b} Sauerstoff in der Ansaugung, höchstens {c}.'],
  [
    'The limit is recalled: ask the maker of the compressor.',
    'Die Grenze ist aus dem Gedächtnis: beim Hersteller des Verdichters nachfragen.',
  ],
  [
    'A poorly mixed intake holds streaks richer than its mean.',
    'Eine schlecht gemischte Ansaugung enthält Schlieren, die reicher sind als ihr Mittel.',
  ],
  // purity
  ['The rule limits {a}; it was not analysed.', 'Die Regel begrenzt {a}; analysiert wurde es nicht.'],
  ['Oil has no molar mass: give its concentration.', 'Öl hat keine molare Masse: seine Konzentration angeben.'],
  ['{a}: {b} ± {c}, limit {d}. {e}', '{a}: {b} ± {c}, Grenze {d}. {e}'],
  [
    'The rule limits water, but no figure for this place or pressure was found.',
    'Die Regel begrenzt Wasser, aber für diese Stelle oder diesen Druck wurde keine Zahl gefunden.',
  ],
  ['The rule as known says nothing about {a}.', 'Die Regel, soweit bekannt, sagt nichts über {a}.'],
  ['The rule was made for breathing up to {a}.', 'Die Regel gilt für das Atmen bis {a}.'],
  [
    'The rule as known does not name the state of its cubic metre; that of the caller was taken.',
    'Die Regel, soweit bekannt, nennt den Zustand ihres Kubikmeters nicht; der angegebene wurde genommen.',
  ],
  ['The rule limits odour; none was recorded.', 'Die Regel begrenzt den Geruch; festgehalten wurde keiner.'],
  ['Odour: {a}.', 'Geruch: {a}.'],
  ['No stage removes {a}.', 'Keine Stufe entfernt {a}.'],
  [
    'The catalyst stands before the sieve: wet, it lets carbon monoxide pass.',
    'Der Katalysator steht vor dem Molekularsieb: feucht lässt er Kohlenmonoxid durch.',
  ],
  [
    'No separator stands before the first bed: liquid water and oil spoil it.',
    'Vor dem ersten Bett steht kein Abscheider: flüssiges Wasser und Öl verderben es.',
  ],
  [
    'No sieve stands before the carbon: in damp air water takes places that oil and odour should have.',
    'Vor der Aktivkohle steht kein Molekularsieb: In feuchter Luft nimmt Wasser die Plätze ein, die Öl und Geruch brauchen.',
  ],
  // water
  ['Water taken: {a}.', 'Aufgenommenes Wasser: {a}.'],
  ['Water taken, with its uncertainty: {a}.', 'Aufgenommenes Wasser mit seiner Unsicherheit: {a}.'],
  ['The capacity is given from memory.', 'Die Aufnahmefähigkeit ist aus dem Gedächtnis angegeben.'],
  [
    'Oil, age and liquid water may have ended the cartridge before.',
    'Öl, Alter und flüssiges Wasser können die Patrone schon vorher verbraucht haben.',
  ],
  [
    'Coldest {a}, frost point of the expanded air {b} to {c}.',
    'Kälteste Stelle {a}, Frostpunkt der entspannten Luft {b} bis {c}.',
  ],
  [
    'Coldest {a}, dew point of the expanded air {b} to {c}.',
    'Kälteste Stelle {a}, Taupunkt der entspannten Luft {b} bis {c}.',
  ],
  [
    'The coldest surface was not stated: a valve seat in a fast flow is colder than throttled gas.',
    'Die kälteste Oberfläche wurde nicht angegeben: Ein Ventilsitz in schneller Strömung ist kälter als gedrosseltes Gas.',
  ],
  // circuits, mixtures
  [
    'At {a} L/min no oxygen is left of the {b} L/min supplied.',
    'Bei {a} L/min bleibt von den zugeführten {b} L/min Sauerstoff nichts übrig.',
  ],
  [
    'Oxygen down to {a} bar at the hardest work; the limit stated is {b} bar.',
    'Sauerstoff bis hinab auf {a} bar bei schwerster Arbeit; die angegebene Grenze ist {b} bar.',
  ],
  [
    'Oxygen up to {a} bar with the gas of the supply; the limit stated is {b} bar.',
    'Sauerstoff bis hinauf auf {a} bar mit dem Gas der Versorgung; die angegebene Grenze ist {b} bar.',
  ],
  [
    'Steady states of a flushed loop at the flow stated; nothing else is covered.',
    'Stationäre Zustände eines gespülten Kreislaufs beim angegebenen Strom; nichts anderes ist erfasst.',
  ],
  [
    '{a}: oxygen up to {b} bar, the limit stated is {c} bar.',
    '{a}: Sauerstoff bis {b} bar, die angegebene Grenze ist {c} bar.',
  ],
  [
    '{a}: oxygen down to {b} bar, the limit stated is {c} bar.',
    '{a}: Sauerstoff hinab bis {b} bar, die angegebene Grenze ist {c} bar.',
  ],
  [
    'Every stretch stays within the two limits stated.',
    'Jeder Abschnitt bleibt innerhalb der beiden angegebenen Grenzen.',
  ],
  // cylinder, ageing
  [
    'a crack was found: no criterion clears a cracked cylinder for use, and the visual examination may condemn it for any crack',
    'Ein Riss wurde gefunden: Kein Kriterium gibt eine Flasche mit Riss frei, und die Sichtprüfung kann sie wegen jedes Risses verwerfen.',
  ],
  [
    'practically open: moist air can get in, and sea water through an open valve',
    'So gut wie offen: Feuchte Luft kann eindringen, durch ein offenes Ventil auch Meerwasser.',
  ],
  [
    'enough to keep water out, but too little to show a leak',
    'Genug, um Wasser fernzuhalten, aber zu wenig, um ein Leck zu zeigen.',
  ],
  ['about the usual storage pressure', 'Etwa der übliche Lagerdruck.'],
  [
    'more oxygen for rusting if there is water inside, and more pressure in a fire',
    'Mehr Sauerstoff zum Rosten, wenn Wasser in der Flasche ist, und mehr Druck bei einem Brand.',
  ],
  [
    'the limit was not read in the rule itself: what stays within it is not thereby acceptable',
    'Die Grenze wurde nicht in der Regel selbst gelesen: Was darunter bleibt, ist damit nicht schon annehmbar.',
  ],
  [
    'no guaranteed minimum wall thickness is given for comparison',
    'Zum Vergleich ist keine gewährleistete Mindestwanddicke angegeben.',
  ],
  [
    'no rejection limit is known here for this material: the maker states it',
    'Für diesen Werkstoff ist hier keine Ausschussgrenze bekannt: Der Hersteller nennt sie.',
  ],
  ['{a} of wall left below the pit, {b} guaranteed', 'Unter der Grube sind {a} Wand übrig, {b} sind gewährleistet.'],
  // filling
  [
    'The gas temperature at the reading is not known, so neither is the settled pressure.',
    'Die Gastemperatur bei der Ablesung ist nicht bekannt, der ausgeglichene Druck also auch nicht.',
  ],
  [
    'The pressure is above the service pressure, and these conditions of the plus mark are unknown: {a}.',
    'Der Druck liegt über dem Betriebsdruck, und diese Bedingungen des Pluszeichens sind unbekannt: {a}.',
  ],
  ['settles at {a}, limit {b}', 'Stellt sich auf {a} ein, Grenze {b}.'],
  [
    'Only steel types carry a valid plus mark, and this cylinder is stated to be aluminium: the plus has no effect.',
    'Nur Bauarten aus Stahl tragen ein gültiges Pluszeichen, und diese Flasche ist als Aluminium angegeben: Das Plus bewirkt nichts.',
  ],
  [
    'The working pressure is more than two thirds of the test pressure. Either a mark was misread or the limit is one for the gas: ask an inspector. The lower limit is used here.',
    'Der Betriebsdruck ist mehr als zwei Drittel des Prüfdrucks. Entweder wurde ein Zeichen falsch gelesen, oder die Grenze gilt für das Gas: eine Prüfstelle fragen. Hier gilt die niedrigere Grenze.',
  ],
  [
    'If the cylinder is aluminium, a lower limit applies ({a}). State its material.',
    'Ist die Flasche aus Aluminium, so gilt eine niedrigere Grenze ({a}). Den Werkstoff angeben.',
  ],
  [
    '{a} bar read, {b} bar expected if tight; without the uncertainty of pressure and temperature this shows nothing either way',
    '{a} bar abgelesen, {b} bar erwartet, wenn dicht; ohne die Unsicherheit von Druck und Temperatur zeigt das weder das eine noch das andere.',
  ],
  [
    '{a} bar read, {b} bar expected if tight, standard uncertainty of the difference {c} bar: a closed cylinder gains no gas, so one of the readings is wrong',
    '{a} bar abgelesen, {b} bar erwartet, wenn dicht, Standardunsicherheit der Differenz {c} bar: Eine geschlossene Flasche gewinnt kein Gas, also ist eine der Ablesungen falsch.',
  ],
  [
    '{a} bar read, {b} bar expected if tight, standard uncertainty of the difference {c} bar',
    '{a} bar abgelesen, {b} bar erwartet, wenn dicht, Standardunsicherheit der Differenz {c} bar.',
  ],
  [
    '{a} % helium remain in the mixture, but the target does not name helium: state the wanted fraction, or drain and flush first',
    'In der Mischung bleiben {a} % Helium, aber das Ziel nennt kein Helium: den gewünschten Anteil angeben, oder vorher ablassen und spülen.',
  ],
  [
    'gas has to be removed: drain to {a} bar absolute first',
    'Gas muss heraus: zuerst bis auf {a} bar absolut ablassen.',
  ],
  [
    'no pressure was read from the shoulder that a limit could be based on',
    'Von der Schulter wurde kein Druck gelesen, auf den sich eine Grenze stützen könnte.',
  ],
  ['the stamp shows {a} at ‘{b}’', 'Der Stempel zeigt {a} bei „{b}“.'],
  ['the stamp shows {a}', 'Der Stempel zeigt {a}.'],
  // requalification
  [
    'a composite for underwater use must be marked UW; this one is not',
    'Ein Verbundwerkstoff für den Einsatz unter Wasser muss UW tragen; dieser trägt es nicht.',
  ],
  [
    'the service life is over: the cylinder cannot be requalified and must be condemned',
    'Die Nutzungsdauer ist zu Ende: Die Flasche kann nicht mehr geprüft werden und ist auszusondern.',
  ],
  [
    'counted from the stamp it was due in {a}, but the interval starts when it is put into service: state putIntoService',
    'Vom Stempel an gezählt war sie {a} fällig, aber die Frist beginnt mit der Inbetriebnahme: putIntoService angeben.',
  ],
  ['was due in {a} if it is {b}', 'War {a} fällig, wenn sie aus {b} ist.'],
  [
    'ended in {a} if it is alloy 6351-T6, as its age or origin suggests',
    'Endete {a}, wenn sie aus der Legierung 6351-T6 ist, wie Alter oder Herkunft vermuten lassen.',
  ],
  ['was due in {a}; not to be filled before {b}', 'War {a} fällig; vor {b} nicht zu füllen.'],
  ['was due in {a}, {b}', 'War {a} fällig, {b}.'],
  ['due in {a}, valid through {b}', 'Fällig {a}, gültig bis einschließlich {b}.'],
  ['the earliest of {a} readings of the dates: {b}', 'Die früheste von {a} Lesarten der Daten: {b}'],
  [
    'the interval is from memory; its text was not read',
    'Die Frist ist aus dem Gedächtnis; ihr Text wurde nicht gelesen.',
  ],
  [
    'the interval was read in an edition that has since been replaced ({a})',
    'Die Frist wurde in einer Ausgabe gelesen, die inzwischen ersetzt ist ({a}).',
  ],
  [
    'the rule is for {a}, but nothing says what the cylinder is made of',
    'Die Regel gilt für {a}, aber nichts sagt, woraus die Flasche ist.',
  ],
  [
    'the star requires at most 125 lb of water, only listed dry gases since, a hammer test before each refill, and no use under water: state that these are met',
    'Der Stern verlangt höchstens 125 lb Wasser, seither nur die genannten trockenen Gase, eine Klangprobe vor jeder Füllung und keinen Einsatz unter Wasser: angeben, dass das erfüllt ist.',
  ],
  [
    'two intervals are possible; which applies depends on the use of the cylinder, which the stamp does not show',
    'Zwei Fristen sind möglich; welche gilt, hängt vom Einsatz der Flasche ab, den der Stempel nicht zeigt.',
  ],
  [
    'the interval is second-hand; the text itself was not read ({a})',
    'Die Frist ist aus zweiter Hand; der Text selbst wurde nicht gelesen ({a}).',
  ],
  ['the interval is customary; there is no rule behind it', 'Die Frist ist üblich; eine Regel steht nicht dahinter.'],
  ['the stamp names {a} for what comes next', 'Der Stempel nennt {a} für das Nächste.'],
  ['the stamp names {a} ({b}), valid through {c}', 'Der Stempel nennt {a} ({b}), gültig bis einschließlich {c}.'],
  [
    'no test date could be read: an inspector must establish it or retest',
    'Es ließ sich kein Prüfdatum lesen: Eine Prüfstelle muss es feststellen oder neu prüfen.',
  ],
  [
    'if filled before the due date, it may stay in service until empty; it may not be refilled before the test',
    'Vor dem Fälligkeitsdatum gefüllt, darf sie im Einsatz bleiben, bis sie leer ist; vor der Prüfung darf sie nicht wieder gefüllt werden.',
  ],
  [
    'by its age or origin it is presumed to be alloy 6351-T6 until shown otherwise, and no eddy-current examination is stamped',
    'Nach Alter oder Herkunft gilt sie bis zum Beweis des Gegenteils als Legierung 6351-T6, und eine Wirbelstromprüfung ist nicht gestempelt.',
  ],
  [
    'no eddy-current examination is stamped, and this alloy has needed one with every test since 2007',
    'Eine Wirbelstromprüfung ist nicht gestempelt, und diese Legierung braucht seit 2007 bei jeder Prüfung eine.',
  ],
  [
    'a special permit sets its own interval and, for composites, the service life: read the permit and state its terms',
    'Eine Sondergenehmigung setzt ihre eigene Frist und bei Verbundwerkstoffen die Nutzungsdauer: die Genehmigung lesen und ihre Bedingungen angeben.',
  ],
  ['rule set {a} has no interval for {b}', 'Der Regelsatz {a} hat keine Frist für {b}.'],
  ['no permit number was read from the shoulder', 'Von der Schulter wurde keine Nummer einer Genehmigung gelesen.'],
  [
    '{a} is not in the given table of permits: read the permit',
    '{a} steht nicht in der angegebenen Tabelle der Genehmigungen: die Genehmigung lesen.',
  ],
  [
    'it cannot be determined whether the test behind the plus is still valid',
    'Ob die Prüfung hinter dem Plus noch gilt, lässt sich nicht feststellen.',
  ],
  ['the plus lapsed with the test that was due in {a}', 'Das Plus ist mit der Prüfung erloschen, die {a} fällig war.'],
  [
    'the last test carries no plus, which ends the permission',
    'Die letzte Prüfung trägt kein Plus, und damit endet die Erlaubnis.',
  ],
  ['the ten per cent rule does not cover this type', 'Die Zehn-Prozent-Regel erfasst diese Bauart nicht.'],
  [
    'without a DOT, TC or UN mark it may not be transported filled in the US, except under a special permit or for export; meeting the interval alone does not make it fillable there, and its test pressure must be at least 5/3 of the marked pressure',
    'Ohne DOT-, TC- oder UN-Zeichen darf sie in den USA gefüllt nicht befördert werden, außer mit einer Sondergenehmigung oder zur Ausfuhr; die eingehaltene Frist allein macht sie dort nicht füllbar, und ihr Prüfdruck muss mindestens 5/3 des gestempelten Drucks sein.',
  ],
  ['marked as rejected', 'Als verworfen gezeichnet.'],
  [
    'the date {a} is in the future: it is not a test, and the stamp does not say what it is',
    'Das Datum {a} liegt in der Zukunft: Es ist keine Prüfung, und der Stempel sagt nicht, was es ist.',
  ],
  // test pressure and expansion
  ['the marked test pressure applies', 'Es gilt der gestempelte Prüfdruck.'],
  [
    'by the rule it would be {a}: {b}, not the {c} marked',
    'Nach der Regel wäre es {a}: {b}, nicht die gestempelten {c}.',
  ],
  ['the rule gives a fixed pressure for this type', 'Die Regel nennt für diese Bauart einen festen Druck.'],
  [
    'a special permit sets its own test pressure: read the permit',
    'Eine Sondergenehmigung setzt ihren eigenen Prüfdruck: die Genehmigung lesen.',
  ],
  [
    'ratio and design pressure as the caller read them from the permit',
    'Verhältnis und Auslegungsdruck, wie sie aus der Genehmigung angegeben wurden.',
  ],
  ['{a} % of the expansion is permanent, limit {b} %', '{a} % der Ausdehnung sind bleibend, Grenze {b} %.'],
  [
    'the limit is from memory: the cylinder’s design standard states it',
    'Die Grenze ist aus dem Gedächtnis: Die Bauvorschrift der Flasche nennt sie.',
  ],
  ['the chosen limit does not cover {a}', 'Die gewählte Grenze erfasst {a} nicht.'],
  ['no rejection value is marked or calculated', 'Ein Ausschusswert ist weder gestempelt noch berechnet.'],
  [
    'for this specification it is not known what exceeding the elastic limit means',
    'Für diese Bauvorschrift ist nicht bekannt, was ein Überschreiten der elastischen Grenze bedeutet.',
  ],
  [
    'elastic expansion does not exceed the rejection value, which is one condition of several',
    'Die elastische Ausdehnung überschreitet den Ausschusswert nicht; das ist eine Bedingung von mehreren.',
  ],
  // valves
  [
    'the rules differ by a tenth or more: read the rating marked on the disc',
    'Die Regeln unterscheiden sich um ein Zehntel oder mehr: den auf der Scheibe gezeichneten Nennwert lesen.',
  ],
  ['{a}, above the test pressure', '{a}, über dem Prüfdruck.'],
  [
    '{a}, below the window: for another cylinder, or weakened',
    '{a}, unter dem Fenster: für eine andere Flasche, oder geschwächt.',
  ],
  ['{a}: filling alone would burst it', '{a}: Schon das Füllen würde sie bersten lassen.'],
  ['no standard pairs these two', 'Keine Norm paart diese beiden.'],
  ['the weaker of the two is rated for {a} bar', 'Der schwächere von beiden ist für {a} bar ausgelegt.'],
  // density
  ['{a}, against {b}: {c}.', '{a}, gegen {b}: {c}.'],
  ['The limit is given from memory.', 'Die Grenze ist aus dem Gedächtnis angegeben.'],
  ['Of the limit: {a}.', 'Zur Grenze: {a}.'],
  [
    'The source does not name the temperature of the gas; the verdict holds for the one given.',
    'Die Quelle nennt die Temperatur des Gases nicht; das Urteil gilt für die angegebene.',
  ],
  // gauges
  [
    'The gauge is off by more than is allowed at the surface.',
    'Das Messgerät weicht an der Oberfläche mehr ab als erlaubt.',
  ],
  [
    'The pointer rests on its stop: how far below it stands cannot be seen.',
    'Der Zeiger liegt am Anschlag: Wie weit er darunter stünde, ist nicht zu sehen.',
  ],
  [
    'In air the cell gives less than its maker accepts.',
    'In Luft gibt die Zelle weniger ab, als ihr Hersteller zulässt.',
  ],
  [
    'In richer gas the cell falls behind: it shows too little oxygen.',
    'In reicherem Gas bleibt die Zelle zurück: Sie zeigt zu wenig Sauerstoff.',
  ],
  [
    'In richer gas the cell gives more than in proportion to air: the point in air, the gas or the cell is not what it is taken for.',
    'In reicherem Gas gibt die Zelle mehr ab, als der Luft entspräche: Der Punkt in Luft, das Gas oder die Zelle ist nicht das, wofür es gehalten wird.',
  ],
  [
    'The cell was not tried up to the highest partial pressure in use.',
    'Die Zelle wurde nicht bis zum höchsten verwendeten Partialdruck geprüft.',
  ],
  ['The cells do not agree: at least one is wrong.', 'Die Zellen stimmen nicht überein: Mindestens eine ist falsch.'],
  [
    'Not every cell was tried this far: cells that are limited in current agree on too little.',
    'Nicht jede Zelle wurde so weit geprüft: Zellen mit begrenztem Strom stimmen in einem zu kleinen Wert überein.',
  ],
  [
    'Cells of one age, one batch or one wet loop fail alike: agreement does not show it.',
    'Zellen eines Alters, einer Charge oder eines feuchten Kreislaufs versagen gleich: Übereinstimmung zeigt das nicht.',
  ],
  ['The port is {a}, the hose {b}.', 'Der Anschluss ist {a}, der Schlauch {b}.'],
  [
    'The port is on the high-pressure side, the hose is made for the other.',
    'Der Anschluss liegt auf der Hochdruckseite, der Schlauch ist für die andere gemacht.',
  ],
  [
    'The port is on the low-pressure side, the hose is made for the other.',
    'Der Anschluss liegt auf der Niederdruckseite, der Schlauch ist für die andere gemacht.',
  ],
  [
    'The rating of the hose is not known: read it on the hose.',
    'Der Nenndruck des Schlauchs ist nicht bekannt: am Schlauch ablesen.',
  ],
  [
    'The pressure behind the port lies above the rating of the hose.',
    'Der Druck hinter dem Anschluss liegt über dem Nenndruck des Schlauchs.',
  ],
  ['This port is known from memory only.', 'Dieser Anschluss ist nur aus dem Gedächtnis bekannt.'],
  ['A reading is off by more than the class allows.', 'Eine Ablesung weicht mehr ab, als die Klasse erlaubt.'],
  [
    'The class is exceeded, and the test was not made at 20 °C.',
    'Die Klasse ist überschritten, und die Prüfung fand nicht bei 20 °C statt.',
  ],
  ['The standard has no such class.', 'Die Norm hat keine solche Klasse.'],
  ['This class is tested at {a} points at least.', 'Diese Klasse wird an mindestens {a} Punkten geprüft.'],
  [
    'Not every point was read on the way down: hysteresis is not known.',
    'Nicht jeder Punkt wurde auf dem Weg hinab gelesen: Die Hysterese ist nicht bekannt.',
  ],
  ['Rising and falling differ by more than the class.', 'Steigend und fallend unterscheiden sich mehr als die Klasse.'],
  [
    'The two differ by more than their uncertainties allow: at least one is wrong.',
    'Die beiden unterscheiden sich mehr, als ihre Unsicherheiten zulassen: Mindestens eines ist falsch.',
  ],
  [
    'An error that both share does not show in their difference.',
    'Ein Fehler, den beide teilen, zeigt sich in ihrer Differenz nicht.',
  ],
  [
    'The two gauges differ by more than the share of full scale: both need a test.',
    'Die beiden Messgeräte unterscheiden sich um mehr als den Anteil am Endwert: Beide sind zu prüfen.',
  ],
  // regulator tests
  [
    'a guard band was asked for, and the uncertainty of the value is not stated',
    'Ein Schutzabstand wurde verlangt, und die Unsicherheit des Werts ist nicht angegeben.',
  ],
  [
    'the margin is smaller than the guard band of {a} standard uncertainties',
    'Der Abstand ist kleiner als der Schutzabstand von {a} Standardunsicherheiten.',
  ],
  [
    'the margin is smaller than the expanded uncertainty of the value: another measurement may fall on the other side',
    'Der Abstand ist kleiner als die erweiterte Unsicherheit des Werts: Eine andere Messung kann auf die andere Seite fallen.',
  ],
  ['the limit is recalled, its text was not seen', 'Die Grenze ist aus dem Gedächtnis, ihr Text wurde nicht gesehen.'],
  [
    'no apparatus is breathed for nothing: check the order of the samples and the sign of the pressure',
    'Kein Gerät atmet sich umsonst: Reihenfolge der Messwerte und Vorzeichen des Drucks prüfen.',
  ],
  [
    'suction is negative here: a sheet that prints it without its sign has to be read with one',
    'Unterdruck ist hier negativ: Ein Blatt, das ihn ohne Vorzeichen druckt, ist mit einem zu lesen.',
  ],
  [
    'the peak of an exhalation lies above zero: check the sign',
    'Die Spitze einer Ausatmung liegt über null: das Vorzeichen prüfen.',
  ],
  [
    'a pressure that never rises above zero gives no assist: leave it out',
    'Ein Druck, der nie über null steigt, ist keine Unterstützung: weglassen.',
  ],
  ['what the apparatus gives is counted as positive', 'Was das Gerät abgibt, zählt positiv.'],
  ['{a} against {b}, as measured', '{a} gegen {b}, wie gemessen.'],
  [
    '{a} against {b}, the value rounded as the limit is stated',
    '{a} gegen {b}, der Wert gerundet, wie die Grenze angegeben ist.',
  ],
  [
    'the work at {a} lies within its expanded uncertainty of the limit: another measurement may fall on the other side',
    'Die Arbeit bei {a} liegt innerhalb ihrer erweiterten Unsicherheit von der Grenze: Eine andere Messung kann auf die andere Seite fallen.',
  ],
  [
    'the work is back within the limit at {a}: it does not rise steadily as the supply falls',
    'Bei {a} liegt die Arbeit wieder innerhalb der Grenze: Sie steigt nicht stetig, während die Versorgung fällt.',
  ],
  [
    'ambient and surface pressure are not both stated; the limit holds {a}',
    'Umgebungs- und Oberflächendruck sind nicht beide angegeben; die Grenze gilt {a}.',
  ],
  ['the {a} is not stated; the limit holds {b}', '{a} ist nicht angegeben; die Grenze gilt {b}.'],
  ['the {a} is {b}; the limit holds {c}', '{a} ist {b}; die Grenze gilt {c}.'],
  [
    'for which {a} the limit holds is recalled, not read',
    'Für welche Werte von {a} die Grenze gilt, ist aus dem Gedächtnis, nicht gelesen.',
  ],
  [
    'the ventilation stated is {a} L/min, tidal volume times breathing frequency {b} L/min',
    'Das angegebene Atemminutenvolumen ist {a} L/min, Atemzugvolumen mal Atemfrequenz {b} L/min.',
  ],
  [
    'one of two supplies: the test is made {a}; for both, give the whole plan',
    'Eine von zwei Versorgungen: Geprüft wird {a}; für beide den ganzen Plan angeben.',
  ],
  ['{a}: {b} of {c} runs', '{a}: {b} von {c} Läufen.'],
  ['{a}: one run has no scatter for a t test', '{a}: Ein einzelner Lauf hat keine Streuung für einen t-Test.'],
  [
    '{a}: the mean lies inside the limit by {b}, where the t test at 5 % asks for {c}',
    '{a}: Das Mittel liegt um {b} innerhalb der Grenze, wo der t-Test bei 5 % {c} verlangt.',
  ],
  [
    '{a}: the mean lies beyond the limit by {b}, where the t test at 5 % asks for {c}',
    '{a}: Das Mittel liegt um {b} jenseits der Grenze, wo der t-Test bei 5 % {c} verlangt.',
  ],
]
