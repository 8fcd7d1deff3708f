// The part of the library psychrolib that the core uses: SI units once chosen, °C, Pa, J/kg, kg/kg, shares 0–1.
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(temperature: number): number;
    GetVapPresFromHumRatio(ratio: number, pressure: number): number;
    GetHumRatioFromVapPres(vapourPressure: number, pressure: number): number;
    GetHumRatioFromTWetBulb(temperature: number, wetBulb: number, pressure: number): number;
    GetHumRatioFromEnthalpyAndTDryBulb(enthalpy: number, temperature: number): number;
    GetMoistAirEnthalpy(temperature: number, ratio: number): number;
    GetMoistAirVolume(temperature: number, ratio: number, pressure: number): number;
  };
  export default psychrolib;
}
