// For authors of training material: a worked solution, its units, its rounding and its source.
import { absolute, bar, depthOf, foot, hectopascal, kilogramPerCubicMetre, measure, standardGravity } from 'litrebar'
import { citation, plainLines, pressureAtDepthCard, workedSolution } from 'litrebar/course'

const solution = workedSolution(
  pressureAtDepthCard,
  {
    p0: absolute(915, hectopascal),
    rho: measure(1000, kilogramPerCubicMetre),
    g: standardGravity,
    d: depthOf(80, foot),
  },
  { units: { p: bar, p0: hectopascal, d: foot }, figures: 3 },
)
for (const { text, note = '' } of plainLines(solution)) console.log(`${text.padEnd(60)} ${note}`.trimEnd())
console.log(citation(pressureAtDepthCard.source, pressureAtDepthCard.place))
