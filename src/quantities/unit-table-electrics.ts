import { nistSp811, type Unit, unit } from './unit.ts'

const nist = { source: nistSp811 }
const gauge = 'ASTM B258: d = 0.127 mm × 92^((36 − n)/39)'

/** Electricity, light, temperature, shares and gauges. */
export const electricsUnits: readonly Unit[] = [
  unit('uV = µV', 'voltage', { factor: '0.000001', ucum: 'uV', names: 'µV|microvolt+' }),
  unit('mV', 'voltage', { factor: '0.001', ucum: 'mV', names: 'mV|millivolt+' }),
  unit('V', 'voltage', { factor: '1', ucum: 'V', names: 'V|v|VDC|Vdc|vdc|VAC|Vac|vac|volt+' }),
  unit('kV', 'voltage', { factor: '1000', ucum: 'kV', names: 'kV|KV|kilovolt+' }),
  unit('uA = µA', 'current', { factor: '0.000001', ucum: 'uA', names: 'µA|uA|microamp+|microampere+' }),
  unit('mA', 'current', { factor: '0.001', ucum: 'mA', names: 'mA|milliamp+|milliampere+' }),
  unit('A', 'current', { factor: '1', ucum: 'A', names: 'A|amp+|Amp+|AMP+|ampere+' }),
  unit('kA', 'current', { factor: '1000', ucum: 'kA', names: 'kA|kiloamp+' }),
  unit('mAh', 'charge', { factor: '3.6', ucum: 'mA.h', names: 'mAh|mAH|milliamp hour+|milliamp-hour+', made: 'mA·h' }),
  unit('Ah', 'charge', { factor: '3600', ucum: 'A.h', names: 'Ah|AH', made: 'A·h', ...nist }),
  unit('mOhm = mΩ', 'resistance', { factor: '0.001', ucum: 'mOhm', names: 'mΩ|milliohm+|mohm+|mOhm+' }),
  unit('Ohm = Ω', 'resistance', { factor: '1', ucum: 'Ohm', names: 'Ω|ohm+' }),
  unit('kOhm = kΩ', 'resistance', {
    factor: '1000',
    ucum: 'kOhm',
    names: 'kΩ|KΩ|kohm+|kOhm+|kilohm+|kiloohm+|kilo-ohm+',
  }),
  unit('MOhm = MΩ', 'resistance', { factor: '1000000', ucum: 'MOhm', names: 'MΩ|MOhm+|Mohm+|megohm+|megaohm+' }),
  unit('uOhm = µΩ', 'resistance', { factor: '0.000001', ucum: 'uOhm', names: 'µΩ|microhm+|microohm+' }),
  unit('mOhm_m = mΩ/m', 'resistance-per-length', { factor: '0.001', ucum: 'mOhm/m', made: 'mOhm/m' }),
  unit('Ohm_m = Ω/m', 'resistance-per-length', { factor: '1', ucum: 'Ohm/m', made: 'Ohm/m' }),
  unit('Ohm_km = Ω/km', 'resistance-per-length', { factor: '0.001', ucum: 'Ohm/km', made: 'Ohm/km' }),
  unit('F', 'capacitance', { factor: '1', ucum: 'F', names: 'farad+' }),
  unit('mF', 'capacitance', { factor: '0.001', ucum: 'mF', names: 'mF|millifarad+' }),
  unit('uF = µF', 'capacitance', { factor: '0.000001', ucum: 'uF', names: 'µF|uF|microfarad+' }),
  unit('nF', 'capacitance', { factor: '0.000000001', ucum: 'nF', names: 'nF|nanofarad+' }),
  unit('pF', 'capacitance', { factor: '0.000000000001', ucum: 'pF', names: 'pF|picofarad+' }),
  unit('H', 'inductance', { factor: '1', ucum: 'H', names: 'H|henry|henries|henrys' }),
  unit('mH', 'inductance', { factor: '0.001', ucum: 'mH', names: 'mH|millihenry|millihenries' }),
  unit('uH = µH', 'inductance', { factor: '0.000001', ucum: 'uH', names: 'µH|uH|microhenry|microhenries' }),
  unit('A2s = A²s', 'let-through', { factor: '1', ucum: 'A2.s', names: 'A²s|A2s|A^2s|A²·s|A²⋅s|A² s' }),
  unit('lm', 'luminous-flux', { factor: '1', ucum: 'lm', names: 'lm|lumen+' }),
  unit('cd', 'luminous-intensity', { factor: '1', ucum: 'cd', names: 'cd|candela+' }),
  unit('lx', 'illuminance', { factor: '1', ucum: 'lx', names: 'lx|lux' }),
  unit('dB', 'level', { factor: '1', ucum: 'dB', names: 'dB|DB|db|decibel+|dBA|dB(A)' }),
  unit('percent = %', 'ratio', { factor: '0.01', ucum: '%', names: '%|percent|per cent|pct' }),
  unit('1 = ', 'ratio', { factor: '1', ucum: '1' }),
  unit('K', 'temperature', { factor: '1', ucum: 'K', names: 'K|°K|kelvin+' }),
  unit('degC = °C', 'temperature', {
    factor: '1',
    offset: '273.15',
    scale: 'offset',
    ucum: 'Cel',
    names:
      '°C|° C|ºC|℃|°c|C|degC|deg C|deg. C|degs C|degrees C|degree C|celsius|centigrade|degrees celsius|degrees centigrade|deg celsius|degree celsius',
  }),
  unit('degF = °F', 'temperature', {
    factor: '5 | 9',
    offset: '459.67',
    scale: 'offset',
    ucum: '[degF]',
    names:
      '°F|° F|ºF|℉|°f|degF|deg F|deg. F|degs F|degrees F|degree F|fahrenheit|degrees fahrenheit|deg fahrenheit|degree fahrenheit',
    ...nist,
  }),
  unit('AWG', 'area', { factor: '1', scale: 'gauge', names: 'AWG|awg', source: gauge }),
  unit('thread', 'thread', { factor: '1', scale: 'none', source: 'ISO 261, ASME B1.1, ISO 228-1, ASME B1.20.1' }),
]
