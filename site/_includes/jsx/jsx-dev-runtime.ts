export type { JSX } from './jsx-runtime.ts'
export { Fragment, jsx as jsxDEV } from './jsx-runtime.ts'
