import { describe, expect, test } from 'vitest'
import { circuitVoltages } from '../../src/checker/circuit-voltages.ts'
import { type BuildInput, publicationOf, readBuildFolder } from '../../src/build.ts'
