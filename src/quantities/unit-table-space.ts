import { nistSp811, type Unit, unit } from './unit.ts'

const nist = { source: nistSp811 }

/** Lengths, areas, volumes, angles and what is counted along a length. */
export const spaceUnits: readonly Unit[] = [
  unit('mm', 'length', { factor: '0.001', ucum: 'mm', names: 'mm|mms|MM|millimetre+|millimeter+' }),
  unit('cm', 'length', { factor: '0.01', ucum: 'cm', names: 'cm|cms|CM|centimetre+|centimeter+' }),
  unit('m', 'length', { factor: '1', ucum: 'm', names: 'm|metre+|meter+|mtr+' }),
  unit('km', 'length', { factor: '1000', ucum: 'km', names: 'km|kms|kilometre+|kilometer+' }),
  unit('um = µm', 'length', { factor: '0.000001', ucum: 'um', names: 'µm|um|micron+|micrometre+' }),
  unit('in', 'length', { factor: '0.0254', ucum: '[in_i]', names: "in|ins|inch|inches|\"|”|″|''", ...nist }),
  unit('ft', 'length', { factor: '0.3048', ucum: '[ft_i]', names: "ft|foot|feet|'|’|′", ...nist }),
  unit('yd', 'length', { factor: '0.9144', ucum: '[yd_i]', names: 'yd+|yard+', ...nist }),
  unit('mi = mile', 'length', { factor: '1609.344', ucum: '[mi_i]', names: 'mi|mile+', ...nist }),
  unit('nmi', 'length', { factor: '1852', ucum: '[nmi_i]', names: 'nmi|nautical mile+|sea mile+', ...nist }),
  unit('thou', 'length', { factor: '0.0000254', ucum: '[mil_i]', names: 'thou|thous', ...nist }),
  unit('mm2 = mm²', 'area', { factor: '0.000001', ucum: 'mm2' }),
  unit('cm2 = cm²', 'area', { factor: '0.0001', ucum: 'cm2' }),
  unit('m2 = m²', 'area', { factor: '1', ucum: 'm2', names: 'sqm' }),
  unit('in2 = in²', 'area', { factor: '0.00064516', ucum: '[sin_i]', ...nist }),
  unit('ft2 = ft²', 'area', { factor: '0.09290304', ucum: '[sft_i]', names: 'sqft', ...nist }),
  unit('yd2 = yd²', 'area', { factor: '0.83612736', ucum: '[syd_i]', ...nist }),
  unit('L', 'volume', { factor: '0.001', ucum: 'L', names: 'L|l|ℓ|ltr+|lt|litre+|liter+' }),
  unit('mL', 'volume', { factor: '0.000001', ucum: 'mL', names: 'mL|ml|mls|ML|millilitre+|milliliter+' }),
  unit('cL', 'volume', { factor: '0.00001', ucum: 'cL', names: 'cL|cl|centilitre+|centiliter+' }),
  unit('dL', 'volume', { factor: '0.0001', ucum: 'dL', names: 'dL|dl|decilitre+|deciliter+' }),
  unit('cc', 'volume', { factor: '0.000001', ucum: 'cm3', names: 'cc|ccs|CC' }),
  unit('mm3 = mm³', 'volume', { factor: '0.000000001', ucum: 'mm3' }),
  unit('cm3 = cm³', 'volume', { factor: '0.000001', ucum: 'cm3', names: 'ccm' }),
  unit('m3 = m³', 'volume', { factor: '1', ucum: 'm3' }),
  unit('in3 = in³', 'volume', { factor: '0.000016387064', ucum: '[cin_i]', names: 'cu. in', ...nist }),
  unit('ft3 = ft³', 'volume', { factor: '0.028316846592', ucum: '[cft_i]', names: 'cu. ft', ...nist }),
  unit('gal_imp = imp gal', 'volume', {
    factor: '0.00454609',
    ucum: '[gal_br]',
    names:
      'imp gal+|imp. gal+|imp gallon+|imp. gallon+|imperial gal+|imperial gallon+|UK gal+|UK gallon+|British gallon+',
    ...nist,
  }),
  unit('gal_us = US gal', 'volume', {
    factor: '0.003785411784',
    ucum: '[gal_us]',
    names: 'US gal+|US gallon+|U.S. gal+|U.S. gallon+|American gallon+',
    ...nist,
  }),
  unit('pt_imp = imp pt', 'volume', {
    factor: '0.00056826125',
    ucum: '[pt_br]',
    names: 'imp pt+|imp pint+|imp. pint+|imperial pint+|UK pint+|British pint+',
    ...nist,
  }),
  unit('pt_us = US pt', 'volume', {
    factor: '0.000473176473',
    ucum: '[pt_us]',
    names: 'US pt+|US pint+|U.S. pint+|American pint+',
    ...nist,
  }),
  unit('deg = °', 'angle', { factor: '1 | 180', scale: 'angle', ucum: 'deg', names: '°|º|deg|degs|degree+' }),
  unit('rad', 'angle', { factor: '1', ucum: 'rad', names: 'rad|rads|radian+' }),
  unit('mrad', 'angle', { factor: '0.001', ucum: 'mrad', names: 'mrad|milliradian+' }),
  unit('1_km = 1/km', 'count-per-length', { factor: '0.001', ucum: '/km', names: '1/km|/km' }),
  unit('1_m = 1/m', 'count-per-length', { factor: '1', ucum: '/m', names: '1/m|/m' }),
]
