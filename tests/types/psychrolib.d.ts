// The package carries no types. These are the functions that the tests call.
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number
    SetUnitSystem(system: number): void
    GetSatVapPres(celsius: number): number
    GetSatHumRatio(celsius: number, pascal: number): number
    GetHumRatioFromRelHum(celsius: number, fraction: number, pascal: number): number
    GetTDewPointFromRelHum(celsius: number, fraction: number): number
    GetTWetBulbFromRelHum(celsius: number, fraction: number, pascal: number): number
  }
  export default psychrolib
}
