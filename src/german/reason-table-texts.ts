/** More reasons: the findings about logs and loops, and the rows of tables that become reasons. As `germanReasons`. */
export const germanReasonsOfTables: readonly (readonly [english: string, german: string])[] = [
  // contaminants, filters
  ['{a} ± {b} {c}, limit {d}.', '{a} ± {b} {c}, Grenze {d}.'],
  ['Draining before its liquid is carried over.', 'Entwässern, bevor seine Flüssigkeit mitgerissen wird.'],
  ['Dry gas: water takes the places of oil.', 'Trockenes Gas: Wasser nimmt die Plätze des Öls ein.'],
  [
    'Free of liquid water and oil. Wet, it gives back carbon dioxide that it held before: the first air after a standstill.',
    'Frei von flüssigem Wasser und Öl. Feucht gibt es Kohlendioxid wieder ab, das es vorher hielt: die erste Luft nach einem Stillstand.',
  ],
  [
    'Gas below 10 % relative humidity: it stands after the sieve. Carbon monoxide becomes carbon dioxide.',
    'Gas unter 10 % relativer Feuchte: Er steht hinter dem Molekularsieb. Aus Kohlenmonoxid wird Kohlendioxid.',
  ],
  ['A place after everything that sheds dust.', 'Ein Platz hinter allem, was Staub abgibt.'],
  [
    'Upwind and well away from the exhaust of the driving engine, vehicles and boats; the wind turns.',
    'Luvseitig und weit weg vom Auspuff des Antriebsmotors, von Fahrzeugen und Booten; der Wind dreht.',
  ],
  [
    'Away from vents of kitchens, heaters, paint, solvents, batteries and drains.',
    'Weit weg von Abluft aus Küchen, Heizungen, Farben, Lösemitteln, Batterien und Abwasser.',
  ],
  [
    'Outside the room of the machine: carbon dioxide of people and oil fumes gather there, and the air is warm.',
    'Außerhalb des Maschinenraums: Dort sammeln sich Kohlendioxid von Menschen und Ölnebel, und die Luft ist warm.',
  ],
  [
    'Above the ground and water, where heavy vapours and spray collect.',
    'Über Boden und Wasser, wo sich schwere Dämpfe und Gischt sammeln.',
  ],
  [
    'Cool and shaded: warm air carries more water and less gas.',
    'Kühl und im Schatten: Warme Luft trägt mehr Wasser und weniger Gas.',
  ],
  [
    'Oil and condensed hydrocarbons far below a rule of breathing air: 0.1 mg/m³ is the criterion of the trade, a fifth of EN 12021.',
    'Öl und kondensierte Kohlenwasserstoffe weit unter einer Regel für Atemluft: 0,1 mg/m³ ist der Maßstab der Branche, ein Fünftel der EN 12021.',
  ],
  [
    'A second filter with charcoal after the first, changed by its own hours.',
    'Ein zweiter Filter mit Aktivkohle hinter dem ersten, nach eigenen Stunden gewechselt.',
  ],
  [
    'Cylinder, valve and filling line cleaned and rated for oxygen: dirt from one fill stays for the next.',
    'Flasche, Ventil und Fülleitung für Sauerstoff gereinigt und ausgelegt: Schmutz aus einer Füllung bleibt für die nächste.',
  ],
  [
    'BS 8478 names such air; its numbers were not read, so no figure of it stands here.',
    'BS 8478 benennt solche Luft; ihre Zahlen wurden nicht gelesen, deshalb steht hier keine.',
  ],
  [
    'An analysis at the outlet that reaches down to the criterion: many tubes do not.',
    'Eine Analyse am Auslass, die bis zum Maßstab hinabreicht: Viele Prüfröhrchen tun das nicht.',
  ],
  [
    'One lexicon prints 21 ± 2 % for the same standard; the narrower band is taken.',
    'Ein Lexikon druckt 21 ± 2 % für dieselbe Norm; genommen wird das engere Band.',
  ],
  ['Before 1997 the limit was 500 ppm.', 'Vor 1997 war die Grenze 500 ppm.'],
  [
    'One of its three columns prints 10 ppm; the heads of the columns were lost.',
    'Eine der drei Spalten druckt 10 ppm; die Spaltenköpfe sind verloren.',
  ],
  ['Another column prints 1000 ppm.', 'Eine andere Spalte druckt 1000 ppm.'],
  ['The limit was read in the rule.', 'Die Grenze wurde in der Regel gelesen.'],
  ['The limit was read in a report of the rule.', 'Die Grenze wurde in einem Bericht über die Regel gelesen.'],
  ['The limit was read in a report of the source.', 'Die Grenze wurde in einem Bericht über die Quelle gelesen.'],
  // traced rates
  [
    'The pressure falls by little beside the uncertainty of a reading: twice what the readings alone leave open is more than 4 % of the rate.',
    'Der Druck fällt um wenig neben der Unsicherheit einer Ablesung: Das Doppelte dessen, was die Ablesungen allein offen lassen, ist mehr als 4 % der Rate.',
  ],
  [
    'The pressure rises at once, or the gas in the cylinder grows in time, by more than the readings scatter: gas came in, the cylinder warmed otherwise than stated, or another one was logged.',
    'Der Druck steigt plötzlich, oder das Gas in der Flasche wird mit der Zeit mehr, und zwar über die Streuung der Ablesungen hinaus: Gas kam hinzu, die Flasche erwärmte sich anders als angegeben, oder eine andere wurde aufgezeichnet.',
  ],
  [
    'The log has a hole longer than a tenth of it: what was breathed then is taken as even.',
    'Die Aufzeichnung hat eine Lücke von mehr als einem Zehntel: Was dann geatmet wurde, gilt als gleichmäßig.',
  ],
  [
    'The pressure stands still while gas worth eight times the uncertainty of a reading should have gone: the sender held its value.',
    'Der Druck steht still, während Gas im Wert der achtfachen Unsicherheit einer Ablesung hätte fehlen müssen: Der Sender hielt seinen Wert.',
  ],
  [
    'A single reading lies apart from both its neighbours by more than they scatter: leave it out if it is false.',
    'Eine einzelne Ablesung liegt von beiden Nachbarn weiter ab, als diese streuen: weglassen, wenn sie falsch ist.',
  ],
  [
    'The rate of one part of the log is more than half as much again as that of another, by more than the readings scatter: the mean stands for neither.',
    'Die Rate eines Teils der Aufzeichnung ist mehr als anderthalbmal so groß wie die eines anderen, über die Streuung der Ablesungen hinaus: Das Mittel steht für keinen.',
  ],
  [
    'A quarter or more of the drop in pressure came from cooling: the rate rests on the stated temperatures and time constant.',
    'Ein Viertel des Druckabfalls oder mehr kam vom Abkühlen: Die Rate stützt sich auf die angegebenen Temperaturen und die Zeitkonstante.',
  ],
  [
    'The cylinder was emptied to less than 5 bar over the greatest pressure around the diver: a stage may have given less than was asked.',
    'Die Flasche wurde bis auf weniger als 5 bar über dem größten Umgebungsdruck geleert: Eine Stufe kann weniger gegeben haben als verlangt.',
  ],
  // inspection
  [
    'white fog when the valve is opened slowly: water inside: the gas leaves saturated',
    'Weißer Nebel beim langsamen Öffnen des Ventils: Wasser in der Flasche, das Gas tritt gesättigt aus.',
  ],
  [
    'something moves inside or sounds dull when the cylinder is turned: water, oil or loose rust inside',
    'Etwas bewegt sich oder klingt dumpf, wenn die Flasche gedreht wird: Wasser, Öl oder loser Rost in der Flasche.',
  ],
  [
    'the gas smells: damp, metallic, oily, foul: corrosion, oil or microbial growth; an odourless gas may still lack oxygen or contain carbon monoxide',
    'Das Gas riecht feucht, metallisch, ölig oder faulig: Korrosion, Öl oder Keime; auch geruchlosem Gas kann Sauerstoff fehlen, oder es enthält Kohlenmonoxid.',
  ],
  [
    'red or brown colour inside a steel cylinder, or on the filter of a regulator: rust: water and oxygen have reacted with the steel; the gas may be short of oxygen',
    'Rote oder braune Farbe in einer Stahlflasche oder auf dem Filter eines Atemreglers: Rost, Wasser und Sauerstoff haben mit dem Stahl reagiert; dem Gas kann Sauerstoff fehlen.',
  ],
  [
    'firmly adhering black layer inside a steel cylinder: magnetite, or burnt or carbonised oil; only an inspector tells them apart',
    'Fest haftende schwarze Schicht in einer Stahlflasche: Magnetit oder verbranntes Öl; nur eine Prüfstelle unterscheidet sie.',
  ],
  [
    'white or grey powder inside an aluminium cylinder or on its filter: aluminium hydroxide: water inside',
    'Weißes oder graues Pulver in einer Aluminiumflasche oder auf ihrem Filter: Aluminiumhydroxid, also Wasser in der Flasche.',
  ],
  [
    'green or blue-green deposit at valve or regulator inlet: corroding brass: salt water has got in',
    'Grüner oder blaugrüner Belag am Ventil oder am Eingang des Atemreglers: Messing korrodiert, Salzwasser ist eingedrungen.',
  ],
  [
    'pitting, blistered paint, or a line of corrosion under a boot or band: wall loss where water is trapped',
    'Gruben, Blasen im Lack oder eine Korrosionslinie unter Standfuß oder Schelle: Wandverlust, wo Wasser stehen bleibt.',
  ],
  [
    'dent, gouge, bulge, bow or arc burn: a weakened or overstressed wall',
    'Beule, Kerbe, Ausbauchung, Krümmung oder Brandstelle eines Lichtbogens: eine geschwächte oder überbeanspruchte Wand.',
  ],
  [
    'scorched or blistered paint, molten parts, signs of fire or of a paint oven: overheating: the metal may have lost its strength',
    'Verbrannter oder blasiger Lack, geschmolzene Teile, Spuren von Feuer oder Lackierofen: Überhitzung, das Metall kann seine Festigkeit verloren haben.',
  ],
  [
    'a line across threads or neck, or a leak past the valve thread: a crack; in alloy 6351-T6 a sustained load crack',
    'Eine Linie quer über Gewinde oder Hals, oder ein Leck am Ventilgewinde: ein Riss; bei der Legierung 6351-T6 ein Riss unter Dauerlast.',
  ],
  [
    'marks filed, overstamped, illegible or contradicting each other: a cylinder of unknown history',
    'Zeichen gefeilt, überstempelt, unlesbar oder widersprüchlich: eine Flasche mit unbekannter Geschichte.',
  ],
  [
    'no pressure left, or the valve was open: moist air or water may have got in',
    'Kein Druck mehr, oder das Ventil stand offen: Feuchte Luft oder Wasser kann eingedrungen sein.',
  ],
  [
    'the cylinder was tumbled to remove rust: metal has been lost: the wall must be measured and the cylinder dried before it is judged again',
    'Die Flasche wurde getrommelt, um Rost zu entfernen: Metall fehlt; vor einem neuen Urteil ist die Wand zu messen und die Flasche zu trocknen.',
  ],
  ['general corrosion deeper than {a}', 'Flächige Korrosion tiefer als {a}.'],
  ['local corrosion deeper than {a}', 'Örtliche Korrosion tiefer als {a}.'],
  ['dent deeper than {a}', 'Beule tiefer als {a}.'],
  ['pit deeper than {a}', 'Grube tiefer als {a}.'],
  ['line or broad corrosion deeper than {a}', 'Linien- oder breitflächige Korrosion tiefer als {a}.'],
  [
    'condemn for a crack of two thread lengths or more in neck or shoulder, by eddy-current and visual examination',
    'Auszusondern bei einem Riss von zwei oder mehr Gewindegängen in Hals oder Schulter, nach Wirbelstrom- und Sichtprüfung.',
  ],
  [
    'condemn for any cracking that has spread into the neck threads',
    'Auszusondern bei jedem Riss, der in das Halsgewinde reicht.',
  ],
  // filling
  [
    'settled pressure at 70 °F at most the service pressure',
    'ausgeglichener Druck bei 70 °F höchstens der Betriebsdruck',
  ],
  [
    'pressure at 131 °F at most five quarters of the service pressure',
    'Druck bei 131 °F höchstens fünf Viertel des Betriebsdrucks',
  ],
  [
    'oxygen above 23.5 % in an aluminium cylinder: settled pressure at 70 °F at most 3000 psi',
    'Sauerstoff über 23,5 % in einer Aluminiumflasche: ausgeglichener Druck bei 70 °F höchstens 3000 psi',
  ],
  [
    'settled pressure at 70 °F at most eleven tenths of the service pressure, if every condition of the plus mark holds',
    'ausgeglichener Druck bei 70 °F höchstens elf Zehntel des Betriebsdrucks, wenn jede Bedingung des Pluszeichens erfüllt ist',
  ],
  [
    'pressure at 131 °F at most five quarters of the permitted filling pressure',
    'Druck bei 131 °F höchstens fünf Viertel des zulässigen Fülldrucks',
  ],
  [
    'settled pressure at 15 °C at most the marked working or filling pressure',
    'ausgeglichener Druck bei 15 °C höchstens der gestempelte Betriebs- oder Fülldruck',
  ],
  [
    'working pressure, settled at 15 °C, at most two thirds of the test pressure',
    'Betriebsdruck, ausgeglichen bei 15 °C, höchstens zwei Drittel des Prüfdrucks',
  ],
  ['pressure at 65 °C at most the test pressure', 'Druck bei 65 °C höchstens der Prüfdruck'],
  [
    'oxygen above 23.5 % in an aluminium cylinder, in the US: settled pressure at 70 °F at most 3000 psi',
    'Sauerstoff über 23,5 % in einer Aluminiumflasche, in den USA: ausgeglichener Druck bei 70 °F höchstens 3000 psi',
  ],
  ['{a}: {b} bar ({c}, edition {d})', '{a}: {b} bar ({c}, Ausgabe {d})'],
  ['above {a} %: {b} ({c}, {d})', 'Über {a} %: {b} ({c}, {d})'],
  [
    'the gas is an oxidizer in transport; an aluminium cylinder must meet the conditions for oxygen',
    'das Gas ist bei der Beförderung entzündend wirkend; eine Aluminiumflasche muss die Bedingungen für Sauerstoff erfüllen',
  ],
  ['a diving valve needs the nitrox connection', 'ein Tauchflaschenventil braucht den Nitrox-Anschluss'],
  ['the gas is no longer synthetic air (20 to 23.5 %)', 'das Gas ist keine synthetische Luft mehr (20 bis 23,5 %)'],
  [
    'equipment must be designed for oxygen and cleaned; above 125 psig shut-offs must open slowly',
    'die Ausrüstung muss für Sauerstoff gebaut und gereinigt sein; über 125 psig müssen Absperrungen langsam öffnen',
  ],
  [
    'any mixture richer than air is handled like oxygen',
    'jede Mischung, die reicher ist als Luft, wird wie Sauerstoff behandelt',
  ],
  [
    'the available gases cannot make the target. {a}',
    'Aus den vorhandenen Gasen lässt sich das Ziel nicht herstellen. {a}',
  ],
  ['the plus mark is current; unknown: {a}', 'Das Pluszeichen gilt; unbekannt: {a}.'],
  [
    'a cylinder is inspected externally before each filling: state what was found, or an empty list',
    'Vor jeder Füllung wird eine Flasche äußerlich geprüft: angeben, was gefunden wurde, oder eine leere Liste.',
  ],
  // requalification
  [
    'R beside the serial number marks a rejected cylinder in Spain',
    'R neben der Seriennummer kennzeichnet in Spanien eine verworfene Flasche.',
  ],
  ['R is a hydraulic test passed in Belgium', 'R ist in Belgien eine bestandene Wasserdruckprüfung.'],
  ['RR is a visual inspection in Belgium', 'RR ist in Belgien eine Sichtprüfung.'],
  ['a cross is a visual inspection in Switzerland', 'Ein Kreuz ist in der Schweiz eine Sichtprüfung.'],
  ['L is the full test in Japan', 'L ist in Japan die volle Prüfung.'],
  ['S is the short test in Japan', 'S ist in Japan die kurze Prüfung.'],
  [
    'if {a} is the next due date, as German shoulders show it',
    'wenn {a} das nächste Fälligkeitsdatum ist, wie deutsche Schultern es zeigen',
  ],
  [
    'unless the mark of {a} was a full test, which it does not say',
    'sofern das Zeichen von {a} keine volle Prüfung war, was es nicht sagt',
  ],
  [
    'the expiry of {a} is not stated: the authority publishes it',
    'Der Ablauf von {a} ist nicht angegeben: Die Behörde veröffentlicht ihn.',
  ],
  [
    '{a} was valid until {b}, as stated: unless it has been renewed, nothing may be filled under it',
    '{a} galt laut Angabe bis {b}: Ohne Verlängerung darf darunter nichts gefüllt werden.',
  ],
  [
    'dents, corrosion, cracked or abraded areas, leakage, thermal damage or another sign of an unsafe condition: to be tested before further use despite a valid date',
    'Beulen, Korrosion, rissige oder abgeriebene Stellen, Lecks, Hitzeschäden oder andere Zeichen eines bedenklichen Zustands: trotz gültigen Datums vor weiterer Verwendung zu prüfen.',
  ],
  [
    'an accident with damage that may impair gas retention: to be tested before further use',
    'Ein Unfall mit Schäden, die den Gaseinschluss beeinträchtigen können: vor weiterer Verwendung zu prüfen.',
  ],
  [
    'known or evident overheating: to be tested before further use',
    'Bekannte oder erkennbare Überhitzung: vor weiterer Verwendung zu prüfen.',
  ],
  ['the authority has ordered a test', 'Die Behörde hat eine Prüfung angeordnet.'],
  [
    'a foreign cylinder is tested at 5/3 of its marked pressure or more, whatever test pressure is marked',
    'Eine ausländische Flasche wird mit mindestens 5/3 ihres gestempelten Drucks geprüft, welcher Prüfdruck auch gestempelt ist.',
  ],
  ['tested at 5/3 of the service pressure', 'Geprüft mit 5/3 des Betriebsdrucks.'],
  ['{a} of the working pressure', '{a} des Betriebsdrucks'],
  ['{a} of the service pressure', '{a} des Betriebsdrucks'],
  // expansion
  [
    'condemned: elastic expansion above the marked value',
    'Auszusondern: elastische Ausdehnung über dem gestempelten Wert.',
  ],
  ['loses the plus mark; not a reason to condemn', 'Verliert das Pluszeichen; kein Grund zum Aussondern.'],
  [
    'the permit may set its own rejection value: read the permit',
    'Die Genehmigung kann einen eigenen Ausschusswert setzen: die Genehmigung lesen.',
  ],
  [
    'the rule gives elastic expansion no meaning for this type',
    'Die Regel gibt der elastischen Ausdehnung bei dieser Bauart keine Bedeutung.',
  ],
  // valves
  ['clamps over the outlet', 'Klemmt über dem Ausgang.'],
  ['screws in by hand to the stop', 'Lässt sich von Hand bis zum Anschlag einschrauben.'],
  [
    'the longer thread reaches the seal of the shorter outlet; the outlet limits the pressure',
    'Das längere Gewinde erreicht die Dichtung des kürzeren Ausgangs; der Ausgang begrenzt den Druck.',
  ],
  [
    'only with a yoke insert made for this outlet',
    'Nur mit einem Einsatz für Bügelanschluss, der für diesen Ausgang gemacht ist.',
  ],
  ['yoke adaptor', 'Bügeladapter'],
  [
    'five turns do not reach the seal of a seven-turn outlet: it leaks by design; never force it',
    'Fünf Gänge erreichen die Dichtung eines Ausgangs mit sieben Gängen nicht: Er ist so gebaut, dass er leckt; nie mit Gewalt.',
  ],
  [
    'no adaptor exists, by design: a yoke is rated for 232 bar',
    'Einen Adapter gibt es mit Absicht nicht: Ein Bügel ist für 232 bar ausgelegt.',
  ],
  [
    'the nitrox thread is larger, to keep air equipment away from oxygen-rich gas',
    'Das Nitrox-Gewinde ist größer, um Ausrüstung für Luft von sauerstoffreichem Gas fernzuhalten.',
  ],
  // logs
  [
    'The pressure stops as at a wall: {a}. A clipped channel hides the peaks and makes the work too small.',
    'Der Druck endet wie an einer Wand: {a}. Ein abgeschnittener Kanal verbirgt die Spitzen und macht die Arbeit zu klein.',
  ],
  [
    'The {a} stands at an end of its range while the pressure goes on: a clipped channel makes the tidal volume too small and the work per litre too large.',
    '{a} steht an einem Ende des Bereichs, während der Druck weitergeht: Ein abgeschnittener Kanal macht das Atemzugvolumen zu klein und die Arbeit je Liter zu groß.',
  ],
  [
    'The pressure hangs at one value in {a} % of the rows while volume is breathed.',
    'Der Druck hängt in {a} % der Zeilen an einem Wert, während Volumen geatmet wird.',
  ],
  [
    'The volume hangs at one value in {a} % of the rows while the pressure goes on.',
    'Das Volumen hängt in {a} % der Zeilen an einem Wert, während der Druck weitergeht.',
  ],
  [
    'The {a} is written {b} times over before it changes: it comes later by {c} ms in the mean. State that in the lag, or give the rows of the slower channel.',
    '{a} wird {b}-mal wiederholt, bevor sich der Wert ändert: Er kommt im Mittel {c} ms später. Das in der Verzögerung angeben, oder die Zeilen des langsameren Kanals.',
  ],
  [
    'Only one row in {a} of the {b} is a sample, those between lie on straight lines: noise and peaks cannot be read. Give the rows of the slower channel.',
    'Nur jede {a}. Zeile ({b}) ist ein Messwert, die dazwischen liegen auf Geraden: Rauschen und Spitzen sind nicht zu lesen. Die Zeilen des langsameren Kanals angeben.',
  ],
  [
    '{a} rows were left out in which the {b} jumps away and back.',
    '{a} Zeilen wurden weggelassen, in denen der Kanal wegspringt und zurück ({b}).',
  ],
  [
    'The pressure jumps away and back in {a} rows: peaks may be theirs.',
    'Der Druck springt in {a} Zeilen weg und zurück: Spitzen können von ihnen stammen.',
  ],
  ['{a} rows with missing values were left out.', '{a} Zeilen mit fehlenden Werten wurden weggelassen.'],
  ['The record has {a} gaps in time.', 'Die Aufzeichnung hat {a} zeitliche Lücken.'],
  ['{a} breaths were left out, cut by gaps.', '{a} Atemzüge wurden weggelassen, weil Lücken sie schneiden.'],
  [
    'A breath holds {a} samples; below {b} what happens between them counts.',
    'Ein Atemzug hat {a} Messwerte; unter {b} zählt, was zwischen ihnen geschieht.',
  ],
  [
    'Single samples of the pressure scatter by {a} Pa, {b} % of its swing: a hum may not average out. Filter it at its source.',
    'Einzelne Messwerte des Drucks streuen um {a} Pa, {b} % seines Hubs: Ein Brummen mittelt sich nicht unbedingt heraus. An der Quelle filtern.',
  ],
  [
    'Single samples of the volume scatter by {a} mL, {b} % of the tidal volume: its turns are drawn too far apart, and the work per litre too small.',
    'Einzelne Messwerte des Volumens streuen um {a} mL, {b} % des Atemzugvolumens: Seine Umkehrpunkte liegen zu weit auseinander, und die Arbeit je Liter wird zu klein.',
  ],
  [
    'One breath does not show a drift of the pressure: none was removed.',
    'Ein einzelner Atemzug zeigt keine Drift des Drucks: Entfernt wurde keine.',
  ],
  ['The drift of the pressure was kept, as asked.', 'Die Drift des Drucks blieb, wie verlangt.'],
  [
    'A drift of the pressure of {a} Pa in {b} s was removed; it would have added {c} J/L.',
    'Eine Drift des Drucks von {a} Pa in {b} s wurde entfernt; sie hätte {c} J/L hinzugefügt.',
  ],
  [
    'The zero of the pressure jumps by about {a} Pa from one breath to the next: what was removed as drift about there is not that of the breaths.',
    'Der Nullpunkt des Drucks springt von einem Atemzug zum nächsten um etwa {a} Pa: Was dort als Drift entfernt wurde, ist nicht die der Atemzüge.',
  ],
  [
    'A drift of the volume of {a} L in {b} s was removed.',
    'Eine Drift des Volumens von {a} L in {b} s wurde entfernt.',
  ],
  [
    'The record leaves {a} % of the work open: breaths that scatter, a zero that wanders, noise, or few samples.',
    'Die Aufzeichnung lässt {a} % der Arbeit offen: streuende Atemzüge, ein wandernder Nullpunkt, Rauschen oder wenige Messwerte.',
  ],
  [
    'No lag of the pressure channel was stated, and none corrected. Each 10 ms of it changes the work by {a} %.',
    'Eine Verzögerung des Druckkanals wurde nicht angegeben und nicht berichtigt. Je 10 ms ändert sie die Arbeit um {a} %.',
  ],
  [
    'A lag of the pressure channel of {a} ms was corrected.',
    'Eine Verzögerung des Druckkanals von {a} ms wurde berichtigt.',
  ],
  [
    'No pause shows the pressure without flow at end exhalation: {a} Pa, half way between the halves, was taken. Halves and peaks are off by half of what the cracking pressures differ.',
    'Keine Pause zeigt den Druck ohne Strömung am Ende der Ausatmung: {a} Pa, die Mitte zwischen den Hälften, wurden genommen. Hälften und Spitzen weichen um die Hälfte dessen ab, was die Ansprechdrücke auseinanderliegen.',
  ],
  [
    'The tidal volumes spread by {a} % and the durations spread by {b} %: the mean stands for no single breath.',
    'Die Atemzugvolumen streuen um {a} %, die Dauern um {b} %: Das Mittel steht für keinen einzelnen Atemzug.',
  ],
  [
    'The tidal volumes spread by {a} %: the mean stands for no single breath.',
    'Die Atemzugvolumen streuen um {a} %: Das Mittel steht für keinen einzelnen Atemzug.',
  ],
  [
    'The durations spread by {a} %: the mean stands for no single breath.',
    'Die Dauern streuen um {a} %: Das Mittel steht für keinen einzelnen Atemzug.',
  ],
  [
    '{a} breaths per minute are outside {b} to {c}: check the unit of the time.',
    '{a} Atemzüge je Minute liegen außerhalb von {b} bis {c}: die Einheit der Zeit prüfen.',
  ],
  [
    'From breath {a} on the work per litre is {b} J/L, before it {c}. From breath {d} on the pressure swing is {e} kPa, before it {f}: a gain, a unit or the breathing changed, and the mean stands for neither.',
    'Ab Atemzug {a} ist die Arbeit je Liter {b} J/L, vorher {c}. Ab Atemzug {d} ist der Druckhub {e} kPa, vorher {f}: Eine Verstärkung, eine Einheit oder die Atmung hat sich geändert, und das Mittel steht für keines.',
  ],
  [
    'From breath {a} on the work per litre is {b} J/L, before it {c}: a gain, a unit or the breathing changed, and the mean stands for neither.',
    'Ab Atemzug {a} ist die Arbeit je Liter {b} J/L, vorher {c}: Eine Verstärkung, eine Einheit oder die Atmung hat sich geändert, und das Mittel steht für keines.',
  ],
  [
    'From breath {a} on the pressure swing is {b} kPa, before it {c}: a gain, a unit or the breathing changed, and the mean stands for neither.',
    'Ab Atemzug {a} ist der Druckhub {b} kPa, vorher {c}: Eine Verstärkung, eine Einheit oder die Atmung hat sich geändert, und das Mittel steht für keines.',
  ],
  [
    'Out of line with the other breaths: {a}. The median work is {b} J/L.',
    'Anders als die übrigen Atemzüge: {a}. Der Median der Arbeit ist {b} J/L.',
  ],
  [
    'Breath {a} took less than half of what the larger ones took. Each counts like any other in the mean.',
    'Atemzug {a} nahm weniger als die Hälfte der größeren. Jeder zählt im Mittel wie jeder andere.',
  ],
  // loops
  [
    'The pressure never changes, so that the work is zero by input and not by merit: check that the pressure channel was connected.',
    'Der Druck ändert sich nie, die Arbeit ist also durch die Eingabe null und nicht durch das Gerät: prüfen, ob der Druckkanal angeschlossen war.',
  ],
  [
    'The net work is negative: the apparatus drives the diver, or the samples run backwards, or the sign of pressure or volume is reversed. Expected: volume rises on inhalation, pressure falls below zero on inhalation.',
    'Die Nettoarbeit ist negativ: Das Gerät treibt den Taucher, oder die Messwerte laufen rückwärts, oder das Vorzeichen von Druck oder Volumen ist umgekehrt. Erwartet: Beim Einatmen steigt das Volumen, und der Druck fällt unter null.',
  ],
  [
    'The halves cross {a}: the signed work of {b} hides a gross work of {c}.',
    'Die Hälften kreuzen sich {a}: Die Arbeit mit Vorzeichen von {b} verbirgt eine Bruttoarbeit von {c}.',
  ],
  [
    'Half the pressure swing is {a} Pa, outside the {b} to {c} Pa of demand regulators. {d}',
    'Der halbe Druckhub ist {a} Pa, außerhalb der {b} bis {c} Pa von Lungenautomaten. {d}',
  ],
  [
    'The tidal volume is {a} L, outside the 0.2 to 8 L of people and machines. {b}',
    'Das Atemzugvolumen ist {a} L, außerhalb der 0,2 bis 8 L von Menschen und Maschinen. {b}',
  ],
  ['Numbers in {a} taken as {b} would look like this.', 'Zahlen in {a}, als {b} genommen, sähen so aus.'],
  [
    'A factor of {a} would bring it inside: check the unit of the column.',
    'Ein Faktor {a} brächte den Wert hinein: die Einheit der Spalte prüfen.',
  ],
  ['Check the unit of the column.', 'Die Einheit der Spalte prüfen.'],
  [
    'The record does not come back to its start: {a} L and {b} Pa are missing, and a straight line was drawn there. Give one whole breath, or remove the drift.',
    'Die Aufzeichnung kehrt nicht zu ihrem Anfang zurück: {a} L und {b} Pa fehlen, und dort wurde eine Gerade gezogen. Einen ganzen Atemzug angeben oder die Drift entfernen.',
  ],
  [
    'The density is {a} times the largest measured: the fit is stretched, and a regulator near its flow limit departs from it.',
    'Die Dichte ist das {a}-Fache der größten gemessenen: Die Anpassung ist überdehnt, und ein Atemregler nahe seiner Leistungsgrenze weicht von ihr ab.',
  ],
  [
    'The density is {a} times the smallest measured: the fit is stretched, and a regulator near its flow limit departs from it.',
    'Die Dichte ist das {a}-Fache der kleinsten gemessenen: Die Anpassung ist überdehnt, und ein Atemregler nahe seiner Leistungsgrenze weicht von ihr ab.',
  ],
  [
    'A part of the fit is negative: the work does not follow density as the model has it, or an assist grows with depth.',
    'Ein Teil der Anpassung ist negativ: Die Arbeit folgt der Dichte nicht wie im Modell, oder eine Unterstützung wächst mit der Tiefe.',
  ],
  [
    'Most of the interval comes from not knowing which part of the work is laminar and follows viscosity: fit the parts from several ventilations.',
    'Das meiste am Intervall kommt daher, dass nicht bekannt ist, welcher Teil der Arbeit laminar ist und der Viskosität folgt: die Teile aus mehreren Atemminutenvolumen anpassen.',
  ],
  [
    'The densities lie {a} to one apart: a regulator near its flow limit departs from the correction.',
    'Die Dichten liegen {a} zu eins auseinander: Ein Atemregler nahe seiner Leistungsgrenze weicht von der Korrektur ab.',
  ],
  // stages
  [
    'rising intermediate pressure opens this valve: it flows by itself before the hose is overloaded',
    'Steigender Mitteldruck öffnet dieses Ventil: Es bläst von selbst ab, bevor der Schlauch überlastet wird.',
  ],
  [
    'rising intermediate pressure closes this valve harder: the hose needs a relief valve',
    'Steigender Mitteldruck schließt dieses Ventil fester: Der Schlauch braucht ein Sicherheitsventil.',
  ],
  ['the valve stands open at this intermediate pressure', 'Bei diesem Mitteldruck steht das Ventil offen.'],
  ['{a} of {b} % lies outside {c} to {d} %', '{a} von {b} % liegt außerhalb von {c} bis {d} %.'],
  // notes on purity rules
  ['A rule for respirators, not for diving.', 'Eine Regel für Atemschutzgeräte, nicht für das Tauchen.'],
  [
    'A sample of a high-pressure source is taken at 12 MPa at least.',
    'Eine Probe aus einer Hochdruckquelle wird bei mindestens 12 MPa genommen.',
  ],
  [
    'A standard covers such air by name, BS 8478:2011; its numbers were not read.',
    'Eine Norm behandelt solche Luft dem Namen nach, BS 8478:2011; ihre Zahlen wurden nicht gelesen.',
  ],
  [
    'An old edition for respirators. The Canadian diving standard was not found.',
    'Eine alte Ausgabe für Atemschutzgeräte. Die kanadische Norm für das Tauchen wurde nicht gefunden.',
  ],
  [
    'Carbon monoxide: a tenth of the national limit of 8 hours. Measured at atmospheric pressure.',
    'Kohlenmonoxid: ein Zehntel des nationalen Grenzwerts für 8 Stunden. Gemessen bei Atmosphärendruck.',
  ],
  [
    'It also limits nitrogen oxides and the dew point, −63 °F.',
    'Sie begrenzt auch Stickoxide und den Taupunkt, −63 °F.',
  ],
  [
    'It judges air that is to meet oxygen-rich gas, beside the rule for breathing air.',
    'Sie beurteilt Luft, die mit sauerstoffreichem Gas zusammenkommt, neben der Regel für Atemluft.',
  ],
  [
    'Its own pairs of ppm and mg/m³ fit 25 °C, cut.',
    'Ihre eigenen Paare von ppm und mg/m³ passen zu 25 °C, abgeschnitten.',
  ],
  [
    'No limit of water was found; another Australian standard recommends one.',
    'Eine Grenze für Wasser wurde nicht gefunden; eine andere australische Norm empfiehlt eine.',
  ],
  [
    'Other toxic parts are to stay below national exposure limits; the share is from memory.',
    'Andere giftige Bestandteile sollen unter den nationalen Grenzwerten bleiben; der Anteil ist aus dem Gedächtnis.',
  ],
  [
    'Tested every 6 months; no test of oil mist for machines without oil.',
    'Geprüft alle 6 Monate; keine Prüfung auf Ölnebel bei ölfreien Maschinen.',
  ],
  [
    'The limit of water above 200 bar was cut in the copy.',
    'Die Grenze für Wasser über 200 bar war in der Kopie abgeschnitten.',
  ],
  [
    'Values are calculated at normal atmospheric pressure (clause 1); the temperature is not named.',
    'Die Werte sind für normalen Atmosphärendruck berechnet (Abschnitt 1); die Temperatur ist nicht genannt.',
  ],
  [
    'Water is limited by dew point: −50 °F at 1 atm in cylinders, 10 °F below the temperature of use from a compressor.',
    'Wasser ist durch den Taupunkt begrenzt: −50 °F bei 1 atm in Flaschen, 10 °F unter der Einsatztemperatur aus einem Verdichter.',
  ],
  [
    'Water is stated at 200 and at 300 bar; in between the stricter one is taken.',
    'Wasser ist für 200 und für 300 bar angegeben; dazwischen gilt die strengere Grenze.',
  ],
  [
    'Water: 24 ppm in one variant of the grade, no limit in another; the third was cut in the copy.',
    'Wasser: 24 ppm in einer Variante der Güteklasse, keine Grenze in einer anderen; die dritte war in der Kopie abgeschnitten.',
  ],
  [
    'Whether it still leaves out apparatus beyond 6 bar, as the edition of 1999 does, was not read.',
    'Ob sie Geräte über 6 bar weiterhin auslässt wie die Ausgabe von 1999, wurde nicht gelesen.',
  ],
  // limits of density
  ['{a} % of the original wall', '{a} % der ursprünglichen Wand'],
  ['{a} % of the outside diameter', '{a} % des Außendurchmessers'],
  // bench findings
  ['iron oxide shed by steel', 'Eisenoxid, das Stahl abgibt'],
  ['water in the cylinder', 'Wasser in der Flasche'],
  ['oxide from an aluminium cylinder', 'Oxid aus einer Aluminiumflasche'],
  ['salt from sea water that came in', 'Salz aus eingedrungenem Meerwasser'],
  [
    'corroded brass inside, after water has stood in the stage',
    'innen korrodiertes Messing, nachdem Wasser in der Stufe stand',
  ],
  ['charcoal or oil from a compressor filter', 'Aktivkohle oder Öl aus einem Verdichterfilter'],
  ['worn or dirty seat of the first stage', 'verschlissener oder verschmutzter Sitz der ersten Stufe'],
  ['damaged sealing edge', 'beschädigte Dichtkante'],
  ['leaking high-pressure seat', 'undichter Hochdrucksitz'],
  ['wrong setting', 'falsche Einstellung'],
  ['tired spring', 'ermüdete Feder'],
  ['blocked filter', 'verstopfter Filter'],
  ['supply nearly empty', 'fast leere Versorgung'],
  ['cylinder valve not open', 'Flaschenventil nicht offen'],
  ['first stage near its flow limit', 'erste Stufe nahe ihrer Leistungsgrenze'],
  ['intermediate pressure too high', 'Mitteldruck zu hoch'],
  ['cracking pressure set too low', 'Ansprechdruck zu niedrig eingestellt'],
  ['lever or seat held open: free flow', 'Hebel oder Sitz wird offen gehalten: Das Ventil bläst ab'],
  ['worn low-pressure seat', 'verschlissener Niederdrucksitz'],
  ['diaphragm torn', 'Membran gerissen'],
  ['exhaust valve folded, torn or dirty', 'Ausatemventil umgeschlagen, gerissen oder verschmutzt'],
  ['exhaust valve held open: water comes in', 'Ausatemventil wird offen gehalten: Wasser dringt ein'],
  ['mouthpiece torn', 'Mundstück gerissen'],
  ['O-ring of a port or hose', 'O-Ring eines Anschlusses oder Schlauchs'],
  ['O-ring of the connection', 'O-Ring der Verbindung'],
  ['piston or diaphragm seal', 'Dichtung von Kolben oder Membran'],
  ['seals and seats age in use and at rest', 'Dichtungen und Sitze altern im Einsatz und in Ruhe'],
  [
    'water column between diaphragm and exhaust valve: no fault where the margin is small',
    'Wassersäule zwischen Membran und Ausatemventil: kein Fehler, wo der Abstand klein ist',
  ],
  // conditions of limits
  ['at {a} or the rated working pressure', 'bei {a} oder dem Nennbetriebsdruck'],
  ['at {a} or {b}', 'bei {a} oder {b}'],
  ['at {a}', 'bei {a}'],
  ['down to {a}', 'bis hinab auf {a}'],
  // fitness for filling
  ['cylinder or valve is not cleaned for oxygen', 'Flasche oder Ventil ist nicht für Sauerstoff gereinigt.'],
  [
    'flammable and liquefied gases have limits of their own, which are not included here',
    'Brennbare und verflüssigte Gase haben eigene Grenzen, die hier nicht enthalten sind.',
  ],
  [
    'no test pressure is marked: it was derived from the working pressure',
    'Ein Prüfdruck ist nicht gestempelt: Er wurde aus dem Betriebsdruck abgeleitet.',
  ],
  [
    'oxygen in an aluminium cylinder requires a valve of brass or stainless steel',
    'Sauerstoff in einer Aluminiumflasche verlangt ein Ventil aus Messing oder nichtrostendem Stahl.',
  ],
  [
    'oxygen in an aluminium cylinder requires straight threads',
    'Sauerstoff in einer Aluminiumflasche verlangt zylindrische Gewinde.',
  ],
  [
    'the gas is richer than air: name the threshold of the station',
    'Das Gas ist reicher als Luft: die Schwelle der Füllstation angeben.',
  ],
  ['the metal of the valve is not stated', 'Das Metall des Ventils ist nicht angegeben.'],
  ['the outlet of the valve is not stated', 'Der Ausgang des Ventils ist nicht angegeben.'],
  [
    'the pressure range of this outlet was not read from its standard',
    'Der Druckbereich dieses Ausgangs wurde nicht aus seiner Norm gelesen.',
  ],
  ['the valve is not stated', 'Das Ventil ist nicht angegeben.'],
  [
    'the working pressure marked on the valve is not stated',
    'Der auf dem Ventil gezeichnete Betriebsdruck ist nicht angegeben.',
  ],
  [
    'type 39 is not refillable: only its maker fills it, once',
    'Bauart 39 ist nicht wiederbefüllbar: Nur ihr Hersteller füllt sie, einmal.',
  ],
  [
    'whether cylinder and valve are cleaned for oxygen is not stated',
    'Ob Flasche und Ventil für Sauerstoff gereinigt sind, ist nicht angegeben.',
  ],
  [
    '{a} is a rule of {b}, but the cylinder is filled in {c}',
    '{a} ist eine Regel von {b}, gefüllt wird die Flasche aber in {c}.',
  ],
  [
    'no rule was read on whether cylinders with {a} marks may be filled in {b}',
    'Ob Flaschen mit {a}-Zeichen in {b} gefüllt werden dürfen, dazu wurde keine Regel gelesen.',
  ],
  ['the neck has {a}, {b} has {c}: do not fill', 'Der Hals hat {a}, {b} hat {c}: nicht füllen.'],
  ['the outlet ({a}) is for {b}', 'Der Ausgang ({a}) ist für {b}.'],
  ['the outlet ({a}) is not a diving outlet', 'Der Ausgang ({a}) ist kein Tauchausgang.'],
  [
    'the outlet ({a}) is rated for {b}, the cylinder for {c}',
    'Der Ausgang ({a}) ist für {b} ausgelegt, die Flasche für {c}.',
  ],
  [
    'the shoulder names a gas ({a}), but the mixture is not air',
    'Die Schulter nennt ein Gas ({a}), aber die Mischung ist keine Luft.',
  ],
  [
    'the thread of {a} is not known: gauge it; similar threads engage and then let go',
    'Das Gewinde ({a}) ist nicht bekannt: mit Lehre prüfen; ähnliche Gewinde greifen und lassen dann los.',
  ],
  ['the valve is rated for {a}, the cylinder for {b}', 'Das Ventil ist für {a} ausgelegt, die Flasche für {b}.'],
  [
    'The record holds {a} whole breaths: the figures are of their mean, ± {b} J/L by their spread. A drift of {c} Pa and {d} L over the record was taken off, its rows taken as even in time.',
    'Die Aufzeichnung hat {a} ganze Atemzüge: Die Zahlen sind die ihres Mittels, ± {b} J/L nach ihrer Streuung. Eine Drift von {c} Pa und {d} L über die Aufzeichnung wurde abgezogen, ihre Zeilen als zeitlich gleichmäßig genommen.',
  ],
]
