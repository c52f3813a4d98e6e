import type { FigureTexts } from '../course/index.ts'

/** The texts of ready-made charts in German. */
export const germanFigures: FigureTexts = {
  bankAcross: 'Geöffnete Speicherflaschen',
  bankUp: 'Erreichter Druck',
  bankUnit: 'bar absolut',
  bankWanted: 'Gewünscht',
  bankDescription: 'Druck in der Flasche nach jeder Speicherflasche, die zu ihr geöffnet wird: {lines}.',
  bankLine: '{name}, am Ende {end} bar',
  capillaryAcross: 'Tiefe',
  capillaryUp: 'Marke vom offenen Ende',
  capillaryName: 'Marken',
  capillaryDescription:
    'Abstand jeder Marke vom offenen Ende der Röhre, über der Tiefe. Die Marken drängen sich: {marks}.',
  capillaryMark: '{depth} m bei {position} mm',
  cartridgeAcross: 'Temperatur am letzten Abscheider',
  cartridgeUp: 'Standzeit nach dem Wasser',
  cartridgeDescription:
    'Standzeit einer Filterpatrone nach dem Wasser, über der Temperatur des letzten Abscheiders. Jede Linie fällt: {lines}.',
  cartridgeLine: '{name}, von {first} h bei {cold} °C bis {last} h bei {warm} °C',
  interstageUp: 'Verdichtungsendtemperatur',
  interstageStage: 'Stufe {number}',
  interstageDescription: 'Temperatur des Gases nach jeder Stufe: {bars}.',
  interstageBar: 'Stufe {number}, {temperature} °C',
  loopAcross: 'Eingeatmetes Volumen',
  loopUp: 'Druck am Mund',
  loopName: 'mittlerer Atemzug',
  loopDescription:
    'Druck am Mund über dem eingeatmeten Volumen, das Mittel von {breaths} Atemzügen. Die Schleife läuft beim Einatmen unter null bis {lowest} mbar und beim Ausatmen darüber zurück bis {highest} mbar; die Fläche in ihr ist die Arbeit, {work} je Liter.',
  resistanceAcross: 'Tiefe',
  resistanceUp: 'Atemarbeit',
  resistanceDescription:
    'Atemarbeit je Liter über der Tiefe, wie die Messungen sie erwarten lassen. Sie wächst mit der Dichte des Gases: {lines}.',
  stageWaterUp: 'Wasser',
  stageWaterSeparator: 'Abscheider {number}',
  stageWaterLeft: 'Verbleibend',
  stageWaterDescription: 'Wasser in jeder Stunde: {bars}.',
  atDepth: '{name}, {value} in {depth} m',
  supplyAcross: 'Tiefe',
  supplyUp: 'Niedrigster Flaschendruck',
  supplyUnit: 'bar Überdruck',
  supplyDescription:
    'Niedrigster Überdruck in der Flasche, bei dem die erste Stufe die Spitze der Atmung noch deckt, über der Tiefe. Jede Linie steigt mit der Tiefe: {lines}.',
  temperatureAcross: 'Flaschendruck, absolut',
  temperatureUp: 'Hinter der ersten Stufe',
  temperatureName: 'Wasser von {temperature}',
  temperatureDescription:
    'Temperatur des Gases hinter der ersten Stufe, wenn keine Wärme es erreichte, über dem Druck in der Flasche. Bei {pressure} bar: {lines}.',
}
