import { aluminiumOxygenConditions, assessOxygenService } from '../filling/index.ts'
import { richerThanAir } from '../filling/mixed-gas.ts'
import { type FillingCondition, reason } from './filling-condition.ts'

/** Rich mixtures: the station's threshold, and whether cylinder and valve are cleaned for oxygen. */
export const isCleanForOxygen: FillingCondition = ({ request: { mixture, oxygen } }) => {
  const passed = [mixture, ...(oxygen?.gasesPassed ?? [])] as const
  if (passed.every((gas) => gas.oxygen <= richerThanAir)) return {}
  if (oxygen === undefined) {
    return {
      doubts: [reason('oxygen-policy-unknown', 'the gas is richer than air: name the threshold of the station')],
    }
  }
  const service = assessOxygenService(passed, oxygen.threshold)
  if (service.verdict === 'within') return { notes: service.because }
  if (oxygen.isCleaned === true) return { notes: service.because }
  return oxygen.isCleaned === false
    ? { against: [reason('not-oxygen-clean', 'cylinder or valve is not cleaned for oxygen'), ...service.because] }
    : { doubts: [reason('oxygen-clean-unknown', 'whether cylinder and valve are cleaned for oxygen is not stated')] }
}

/** Oxygen above 23.5 % in aluminium in the US: metal of the valve, straight threads. The pressure is part of the limit. */
export const isFitForOxygenInAluminium: FillingCondition = ({
  stamp,
  request: { mixture, country, valve, neckThread },
}) => {
  const { oxygenAbove, source } = aluminiumOxygenConditions
  if (country !== 'US' || stamp.material !== 'aluminium' || mixture.oxygen <= oxygenAbove / 100 + 1e-12) return {}
  const metal = valve?.metal
  const isTaper =
    stamp.thread?.form === 'taper' || /NPT|NGT|^\d\dE$/.test(stamp.thread?.designation ?? neckThread ?? '')
  return {
    against: [
      ...(metal === 'other'
        ? [
            reason(
              'valve-metal',
              'oxygen in an aluminium cylinder requires a valve of brass or stainless steel',
              source,
            ),
          ]
        : []),
      ...(isTaper && stamp.system !== 'UN'
        ? [reason('taper-thread', 'oxygen in an aluminium cylinder requires straight threads', source)]
        : []),
    ],
    doubts: metal === undefined ? [reason('valve-metal-unknown', 'the metal of the valve is not stated', source)] : [],
  }
}

// In air there is 0.04 % of it; a cent of it would be another gas.
const mostCarbonDioxide = 0.01

/** Gases that the limits and the marks do not speak of. */
export const isGasCovered: FillingCondition = ({ stamp, request: { mixture } }) => {
  const isAir = mixture.oxygen >= 0.2 && mixture.oxygen <= 0.22 && mixture.helium === 0
  return {
    doubts: [
      ...(mixture.hydrogen > 0 || mixture.carbonDioxide > mostCarbonDioxide
        ? [
            reason(
              'gas-not-covered',
              'flammable and liquefied gases have limits of their own, which are not included here',
            ),
          ]
        : []),
      ...(stamp.gas === undefined || isAir
        ? []
        : [reason('gas-word', `the shoulder names a gas (${stamp.gas}), but the mixture is not air`)]),
    ],
  }
}
