/** The words of a list, apart by spaces or line ends. */
export const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/))

/** Words before which *in* is never a unit. */
export const prepositionBefore = words(`
  the a an all my our your yours mine ours theirs his her its their this that these those it them us me him there here each every both any
  either neither another some most no which what whose total series parallel between place places front line turn order
  stock use hand time case fact general particular common addition advance reserve service transit storage situ work
  number together question position favour person practice theory reality gear neutral reverse town traffic pairs twos threes fours rows
  pots barrels buckets sacks coils shops sheds boxes bags parcels crates envelopes packs packets drawers tins jars trays cartons bundles layers stages sets groups parts halves bits pieces
  chunks half good poor perfect working running fair excellent bad spring summer autumn winter minutes seconds hours days
  weeks months years second third fourth fifth sixth top bottom succession sequence quick rapid store dispute doubt need
  search response return exchange cash full short future past end effect action tandem unison turns rotation step
  sync sight view daylight detail vain class bed storage dock orbit water oil petrol diesel paraffin grease sawdust sand
  concrete mud spirit vinegar acid solvent europe wales scotland england ireland store reach english german french size colour color tens dozens hundreds spite view charge
  comfort peace silence private public secret haste trouble danger safety anger earnest contact combination company control motion
  operation pain play power preparation process production progress proportion pursuit readiness rotation shape
  tune unison error evidence duplicate triplicate demand existence formation isolation keeping memory moderation ruins season
  session tatters terms touch training trust waiting writing christmas easter summertime overtime hospital traffic bulk
  excess contrast comparison effect essence concert conjunction accordance line lieu
  january february april june july august september october november december`)

/** Words before which *in* is always a unit. */
export const inchesBefore = words(`
  long wide deep high thick tall from off above below apart across of diameter dia bore square clear clearance x
  longer shorter wider narrower deeper higher lower thicker thinner od id bsp af gauge radius forward forwards back
  backwards rearward rearwards inboard outboard up down outside inside proud into away nearer further behind ahead past to
  slots discs disk disks grooves tabs gussets rivet rivets dowel dowels hinge hinges fins vents cuts joints welds runs lugs
  clips hooks rings exhaust flue funnel lens gauge dial speaker propeller prop shelf shelves
  in stroke travel lift drop rise gap pipe tube hose rod bar bolt bolts disc drive pulley wheel wheels tyre tyres screw screws
  nail nails washer washers stud studs pin pins tubes pipes hoses rods bars angle channel flat square section plate sheet
  tape webbing strap straps chain rope cable duct ducting fan grinder vice clamp clamps saw blade brush chisel drill hole
  holes centres centers spacing intervals pitch castor castors caster casters flange strip strips lengths pieces block blocks board boards plank planks batten
  battens spacer spacers overhang overlap offset step taller because since if which who though although until unless than
  very is was will would can could has had overall altogether extra onto upon beyond beneath underneath towards toward
  inwards outwards upwards downwards sideways spare shy free rather again
  laden unladen loaded empty amidships aft astern abaft rearward low screen monitor television cubes cube throat sub subwoofer
  conduit guttering gutter drain drains coupling elbow tee nipple bushing bearing bearings gasket valve adapter adaptor
  reducer trunking shackle anchor coupler nb sch schedule thermometer ruler rule
  bigger smaller greater closer farther larger straighter flatter steeper tighter looser fatter fuller slimmer prouder`)

/** Words after which whole figures with *in* are a size, whatever follows: *a 3 in skirt*, *made of 2 in box*. */
export const sizeBefore = words(`
  a an the another one each this that new old small big x by of with from for is was are were be been to about over under
  nearly almost roughly every least most than measures measured deep wide long moved moves move moving it them only
  slid slide slides sliding fell fall falls rose rise rises crept creeps hang hangs hung stand stands stood sit sits stick
  sticks out down up back project projects protrude protrudes overhangs extend extends extended reach reaches travels
  travelled rolled swung swings span spans grew shrank stretched jumped dips dipped bows bowed sag sags sagged sank sinks
  shortened lengthened widened raised lowered lifted shifted nudged allow allows allowing`)

/** What things are made of or painted. */
export const materials = words(`
  gloss matt matte felt cloth paper card foam mdf timber pine
  red black white blue green yellow brown grey gray orange purple pink stainless steel brass bronze copper aluminium alloy
  plastic rubber nylon wood oak ply plywood mild galvanised cast iron leather primer paint`)
