import { nistSp811, type Unit, unit } from './unit.ts'

const nist = { source: nistSp811 }
const pound = '0.45359237' // kg, exact (NIST SP 811 B.8)
const gravity = '9.80665' // m/s², exact (NIST SP 811 B.8)
const foot = '0.3048' // m, exact (NIST SP 811 B.8)
const inch = '0.0254' // m, exact (NIST SP 811 B.8)
const water = `1000 ${gravity}` // Pa a metre, conventional water (NIST SP 811 B.8)
const heat = '1055.05585262' // J, the International Table Btu (NIST SP 811 B.8)

/** Units that a workshop meets now and then: of ducts, rigging, surfaces, springs, gas and water gauges. */
export const rarerUnits: readonly Unit[] = [
  unit('uin = µin', 'length', { factor: '0.0000000254', names: 'µin|uin|microinch|microinches|micro-inch', ...nist }),
  unit('fathom', 'length', { factor: `6 ${foot}`, ucum: '[fth_i]', names: 'fathom+', ...nist }),
  unit('ha', 'area', { factor: '10000', ucum: 'har', names: 'ha|hectare+' }),
  unit('kcmil', 'area', {
    factor: '1000 0.0000254 0.0000254 | 4',
    scale: 'angle',
    ucum: '1000.[cml_i]',
    names: 'kcmil+|MCM',
    ...nist,
  }),
  unit('uL = µL', 'volume', { factor: '0.000000001', ucum: 'uL', names: 'µL|µl|uL|microlitre+|microliter+' }),
  unit('yd3 = yd³', 'volume', { factor: '0.764554857984', ucum: '[cyd_i]', ...nist }),
  unit('ug = µg', 'mass', { factor: '0.000000001', ucum: 'ug', names: 'µg|ug|mcg|microgram+' }),
  unit('t_m3 = t/m³', 'density', { factor: '1000', ucum: 't/m3', made: 't/m3' }),
  unit('lb_ft3 = lb/ft³', 'density', {
    factor: `${pound} | ${foot} ${foot} ${foot}`,
    ucum: '[lb_av]/[cft_i]',
    made: 'lb/ft3',
    ...nist,
  }),
  unit('lb_in3 = lb/in³', 'density', {
    factor: `${pound} | ${inch} ${inch} ${inch}`,
    ucum: '[lb_av]/[cin_i]',
    made: 'lb/in3',
    ...nist,
  }),
  unit('kip', 'force', { factor: `1000 ${pound} ${gravity}`, ucum: '1000.[lbf_av]', names: 'kip+', ...nist }),
  unit('ozf', 'force', { factor: `${pound} ${gravity} | 16`, ucum: '[lbf_av]/16', names: 'ozf|ounce-force', ...nist }),
  unit('atm', 'pressure', { factor: '101325', ucum: 'atm', names: 'atm|atmosphere+', ...nist }),
  unit('torr', 'pressure', { factor: '101325 | 760', names: 'torr|Torr', ...nist }),
  unit('ksi', 'pressure', {
    factor: `1000 ${pound} ${gravity} | ${inch} ${inch}`,
    ucum: '1000.[psi]',
    names: 'ksi',
    ...nist,
  }),
  unit('psf', 'pressure', {
    factor: `${pound} ${gravity} | ${foot} ${foot}`,
    ucum: '[lbf_av]/[sft_i]',
    names: 'psf',
    made: 'lb/ft2|lbf/ft2',
    ...nist,
  }),
  unit('kgf_mm2 = kgf/mm²', 'pressure', {
    factor: `${gravity} 1000000`,
    ucum: 'kgf/mm2',
    made: 'kgf/mm2|kg/mm2',
    ...nist,
  }),
  unit('mmH2O = mmH₂O', 'pressure', {
    factor: `${water} 0.001`,
    ucum: 'mm[H2O]',
    names: 'mmH2O|mm H2O|mmH₂O|mm H₂O|mm wg|mmwg|mm w.g|mm of water|millimetres of water',
    ...nist,
  }),
  unit('inH2O = inH₂O', 'pressure', {
    factor: `${water} ${inch}`,
    ucum: "[in_i'H2O]",
    names:
      'inH2O|in H2O|inH₂O|in H₂O|"H2O|" H2O|in wg|inwg|in w.g|"wg|" wg|inWC|in WC|"WC|" WC|inches wg|inches of water',
    ...nist,
  }),
  unit('Nmm = N·mm', 'torque', { factor: '0.001', ucum: 'N.mm', names: 'Nmm', made: 'N·mm' }),
  unit('kgf_cm = kgf·cm', 'torque', {
    factor: `${gravity} 0.01`,
    ucum: 'kgf.cm',
    names: 'kgcm|kgfcm',
    made: 'kgf·cm|kg·cm',
    ...nist,
  }),
  unit('ozf_in = ozf·in', 'torque', {
    factor: `${pound} ${gravity} ${inch} | 16`,
    ucum: '[lbf_av].[in_i]/16',
    names: 'ozin|inoz',
    made: 'oz·in|in·oz|ozf·in|in·ozf',
    ...nist,
  }),
  unit('kN_m = kN/m', 'spring-rate', { factor: '1000', ucum: 'kN/m', made: 'kN/m' }),
  unit('kgf_per_mm = kgf/mm', 'spring-rate', {
    factor: `${gravity} 1000`,
    ucum: 'kgf/mm',
    made: 'kgf/mm|kg/mm',
    ...nist,
  }),
  unit('MWh', 'energy', { factor: '3600000000', ucum: 'MW.h', names: 'MWh', made: 'MW·h' }),
  unit('Btu', 'energy', { factor: heat, ucum: '[Btu_IT]', names: 'Btu+|BTU+|btu+', ...nist }),
  unit('Btu_h = Btu/h', 'power', {
    factor: `${heat} | 3600`,
    ucum: '[Btu_IT]/h',
    names: 'BTUH',
    made: 'Btu/h',
    ...nist,
  }),
  unit('VA', 'power', { factor: '1', ucum: 'V.A', names: 'VA|volt-amp+' }),
  unit('kVA', 'power', { factor: '1000', ucum: 'kV.A', names: 'kVA|KVA|kva' }),
  unit('cm_s = cm/s', 'speed', { factor: '0.01', ucum: 'cm/s', made: 'cm/s' }),
  unit('in_s = in/s', 'speed', { factor: inch, ucum: '[in_i]/s', made: 'in/s', ...nist }),
  unit('in_min = in/min', 'speed', {
    factor: `${inch} | 60`,
    ucum: '[in_i]/min',
    names: 'ipm',
    made: 'in/min',
    ...nist,
  }),
  unit('ft_s2 = ft/s²', 'acceleration', { factor: foot, ucum: '[ft_i]/s2', made: 'ft/s2', ...nist }),
  unit('m3_min = m³/min', 'flow', { factor: '1 | 60', ucum: 'm3/min', made: 'm3/min' }),
  unit('mL_s = mL/s', 'flow', { factor: '0.000001', ucum: 'mL/s', made: 'mL/s|cc/s' }),
  unit('cfm', 'flow', {
    factor: `${foot} ${foot} ${foot} | 60`,
    ucum: '[cft_i]/min',
    names: 'cfm|scfm',
    made: 'ft3/min',
    ...nist,
  }),
  unit('cfh', 'flow', {
    factor: `${foot} ${foot} ${foot} | 3600`,
    ucum: '[cft_i]/h',
    names: 'cfh|scfh',
    made: 'ft3/h',
    ...nist,
  }),
]
