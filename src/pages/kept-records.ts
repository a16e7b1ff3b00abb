/** What a published rule asks of a record, and how far this one goes. */
interface KeptRule {
  readonly asks: string
  readonly here: string
  readonly isFollowed: 'yes' | 'in part' | 'no'
}

interface RuleSource {
  readonly title: string
  readonly id: string
  /** What the rule is for, and why it can only be a pattern here. */
  readonly says: string
  readonly rules: readonly KeptRule[]
}

/** ISO/IEC 17025:2017, 7.5, technical records of laboratories, in our words. */
const technicalRecords: RuleSource = {
  title: 'ISO/IEC 17025:2017, 7.5, technical records',
  id: 'technical-records',
  says: 'Written for testing laboratories. Nobody has accredited this record; it takes the clause as a pattern.',
  rules: [
    {
      asks: 'Results stand with enough about how they were got that the work could be repeated and its uncertainty judged (7.5.1).',
      here: 'A figure keeps its tolerance, the tool that it was taken with and its sentence, where the note says them. What a note leaves out is not there.',
      isFollowed: 'in part',
    },
    {
      asks: 'Each record bears its date and who is answerable for the work and for checking it (7.5.1).',
      here: 'Every note is dated, and names its writer where the builder says who it is: the list below shows it. Nobody is named as having checked it.',
      isFollowed: 'in part',
    },
    {
      asks: 'Observations, data and calculations are recorded when they are made, and belong to a task (7.5.1).',
      here: 'Each stands in the note of its session, and calculations are worked anew from the notes. That a note was written on its day, nothing proves.',
      isFollowed: 'in part',
    },
    {
      asks: 'A change can be followed back to what stood before; both are kept, with the date of the change, what changed and who changed it (7.5.2).',
      here: 'A later note corrects an earlier one by naming the same thing again. Both stay, both are dated, and the list below sets them side by side. It was changed by whoever wrote the later note.',
      isFollowed: 'in part',
    },
  ],
}

/** 14 CFR 43.9(a), content of maintenance records of aircraft, in our words. */
const maintenanceRecords: RuleSource = {
  title: '14 CFR 43.9(a), content of maintenance records',
  id: 'maintenance-records',
  says: 'Written for aircraft in the United States; it binds no road vehicle. It is taken as a pattern of what an entry says.',
  rules: [
    {
      asks: 'A description of the work performed (43.9(a)(1)).',
      here: 'The note of the session, in the words of whoever did the work.',
      isFollowed: 'yes',
    },
    {
      asks: 'The date on which the work was completed (43.9(a)(2)).',
      here: 'The date of the session, which does not say that the work is complete. A job keeps the session that closed it.',
      isFollowed: 'in part',
    },
    {
      asks: 'The name of the person who performed the work, if another approves it (43.9(a)(3)).',
      here: 'The writer of the note, where the builder says who it is; an edition may withhold the name.',
      isFollowed: 'in part',
    },
    {
      asks: 'Signature, certificate number and kind of certificate of the person who approves the work; the signature is the approval for return to service (43.9(a)(4)).',
      here: 'None. Nothing here approves anything: the lines for a signature on the sheet of points are empty, for an inspector to fill in by hand.',
      isFollowed: 'no',
    },
  ],
}

/** What the keeping of this record is modelled on. */
export const keptRules: readonly RuleSource[] = [technicalRecords, maintenanceRecords]
