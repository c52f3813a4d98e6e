/** What stands on the axes of ready-made charts, at their lines, and in their descriptions, by id. `{name}` stands for what is filled in. */
export const figureTexts = {
  bankAcross: 'Bank cylinders opened',
  bankUp: 'Pressure reached',
  bankUnit: 'bar absolute',
  bankWanted: 'Target',
  bankDescription: 'Pressure in the cylinder after each bank cylinder is opened to it: {lines}.',
  bankLine: '{name}, {end} bar at the end',
  capillaryAcross: 'Depth',
  capillaryUp: 'Mark from the open end',
  capillaryName: 'Marks',
  capillaryDescription: 'Distance of each mark from the open end of the tube, against depth. The marks crowd: {marks}.',
  capillaryMark: '{depth} m at {position} mm',
  cartridgeAcross: 'Temperature at the last separator',
  cartridgeUp: 'Life by water load',
  cartridgeDescription:
    'Cartridge life by water load against the temperature of the last separator. Every line falls: {lines}.',
  cartridgeLine: '{name}, from {first} h at {cold} °C to {last} h at {warm} °C',
  interstageUp: 'Discharge temperature',
  interstageStage: 'Stage {number}',
  interstageDescription: 'Temperature of the gas after each stage: {bars}.',
  interstageBar: 'stage {number}, {temperature} °C',
  loopAcross: 'Volume breathed in',
  loopUp: 'Mouth pressure',
  loopName: 'mean breath',
  loopDescription:
    'Pressure at the mouth against volume breathed in, the mean of {breaths} breaths. The loop runs below zero while inhaling, to {lowest} mbar, and back above zero while exhaling, to {highest} mbar; the area inside it is the work, {work} per litre.',
  resistanceAcross: 'Depth',
  resistanceUp: 'Work of breathing',
  resistanceDescription:
    'Work of breathing per litre against depth, as predicted from the measurements. It grows with gas density: {lines}.',
  stageWaterUp: 'Water',
  stageWaterSeparator: 'Separator {number}',
  stageWaterLeft: 'Left',
  stageWaterDescription: 'Water per hour: {bars}.',
  atDepth: '{name}, {value} at {depth} m',
  supplyAcross: 'Depth',
  supplyUp: 'Lowest cylinder pressure',
  supplyUnit: 'bar gauge',
  supplyDescription:
    'Lowest gauge pressure in the cylinder at which the first stage still meets the peak demand, against depth. Every line rises with depth: {lines}.',
  temperatureAcross: 'Cylinder pressure, absolute',
  temperatureUp: 'After the first stage',
  temperatureName: 'water of {temperature}',
  temperatureDescription:
    'Gas temperature after the first stage, with no heat from the water, against cylinder pressure. At {pressure} bar: {lines}.',
} as const

/** The texts of ready-made charts, each under its id. */
export type FigureTexts = Readonly<Record<keyof typeof figureTexts, string>>
