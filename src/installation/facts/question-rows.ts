/**
 * The questionnaire of a remote survey: a line for every question, in the order in which they are best asked.
 *
 *     id | title | answer | usual | whom to ask | question | what to photograph | example | facts that it sets
 *
 * The answer is `text`, `date`, `clock`, `yes`, `count`, `bond` (a size, `none` where there is no such metal, or
 * `missing` where it is not bonded), a unit with the role of the vocabulary (`A deviceRating`), or the list that its
 * choices are labels of. Usual is the range outside of which somebody should look again: common practice, no source. A
 * dash means nothing; for question, photograph and whom to ask, the words of the register for the first fact that is
 * set. A star after the id: asked first, before all others.
 */
export const questionRows = `
= The job
reference* | Reference | text | - | - | - | - | - | about.reference, about.title
date* | Day of the survey | date | - | - | - | - | - | about.date
edition | Edition of the wiring rules | text | - | - | - | - | - | code.edition
premises | Kind of premises | about.premises | - | - | - | - | - | about.premises
specialLocation* | Special location | specialLocation | - | - | - | - | - | supply.specialLocation
meterPoint | Meter-point number | text | - | - | - | - | - | supply.meterPoint

= Supply
earthing* | Earthing arrangement | system | - | customer | What stands on the label at the cut-out, and where does the green-and-yellow wire go: to the cut-out, to the sheath of the service cable, or to a rod? | - | - | supply.system
phases* | Phases | phaseCount | - | - | - | - | - | supply.phases
mainFuse* | Main fuse | A deviceRating | 45..125 | customer | How many amperes are printed on the cut-out? | the cut-out, close up, so that the marking can be read; do not break the seal | 80 A | supply.cutOut.rating
mainFuseKind | Kind of main fuse | mainFuse | - | operator | Which standard is printed on the cut-out fuse? | - | BS 1361 | supply.cutOut.kind
cutOutSound* | Cut-out sound | yes | - | customer | Is the cut-out free of cracks, scorching, leaking compound and exposed metal? | - | - | supply.cutOutSound
looped* | Looped service | yes | - | - | - | - | - | supply.looped
ze | Ze, measured | Ω externalImpedance | 0.05..2 | - | - | - | - | supply.externalImpedance
ipf | Ipf, measured | kA prospectiveCurrent | 0.1..16 | - | - | - | - | supply.prospectiveCurrent
tails | Meter tails | mm² tailsArea | 10..35 | customer | What size is printed on the two thick wires between the meter and the consumer unit? | - | - | supply.tails
earthingConductor | Earthing conductor | mm² earthingConductorArea | 4..25 | customer | What size is printed on the thick green-and-yellow wire from the cut-out or the rod? | - | - | supply.earthingConductor
earthingConductorLaid | Where the earthing conductor runs | earthingConductorLaid | - | - | - | - | - | supply.earthingConductorLaid
supplyNeutral | Neutral of the service | mm² supplyNeutralArea | 10..95 | - | - | - | - | supply.supplyNeutral
waterBond* | Bonding of water | bond bondingArea | 4..25 | customer | Is there a green-and-yellow wire at a metal water pipe near the stop valve, and of what size? | the clamp at the pipe near the stop valve, with its label | 10 mm² | supply.bonding, supply.noExtraneousParts
gasBond* | Bonding of gas | bond bondingArea | 4..25 | customer | Is there a green-and-yellow wire at the gas pipe near the meter, and of what size? | the clamp at the gas pipe near the meter, with its label | 10 mm² | supply.bonding, supply.noExtraneousParts
otherBond | Bonding of other metal | bond bondingArea | 4..25 | site | Is there an oil pipe or steelwork that comes out of the ground, and what is it bonded with? | each clamp, with its label | none | supply.bonding, supply.noExtraneousParts
electrode | Earth electrode | Ω electrodeResistance | 5..200 | - | - | - | - | supply.electrode.resistance
measuredDemand | Highest demand measured | A demand | 5..100 | - | - | - | - | supply.meteredDemand.current
measuredOver | What the measured demand rests on | text | - | - | - | - | - | supply.meteredDemand.about
demandMargin | Margin on the measured demand | % demandMargin | 0..50 | - | - | - | - | demand.meteredMargin

= Consumer unit
mainSwitch | Main switch | A deviceRating | 60..125 | customer | How many amperes are printed on the main switch? | - | - | board.mainSwitch.rating
boardRating | Rating of the board | A deviceRating | 60..125 | - | - | - | - | board.rating
boardFaultRating | Fault rating of the board | kA breakingCapacity | 6..25 | - | - | - | - | board.conditionalRating
spareWays | Spare ways | count | 0..10 | - | - | - | - | board.spareWays
surgeProtection | Surge protection | yes | - | - | - | - | - | board.surgeProtection

= What is there already
lightingCircuits* | Lighting circuits | count | 0..6 | customer | How many switches of 6 A marked lights has the consumer unit? | the schedule on the door of the board | 2 | board.runs
ringCircuits* | Ring circuits for sockets | count | 0..5 | customer | How many switches of 32 A marked sockets or ring has the consumer unit? | the schedule on the door of the board | 2 | board.runs
radialCircuits | Radial circuits for sockets | count | 0..5 | customer | How many switches of 16 or 20 A marked sockets has the consumer unit? | the schedule on the door of the board | 0 | board.runs
cooker* | Electric cooker, oven and hob | kW activePower | 0..15 | customer | How many kW stand on the rating plates of electric oven and hob, both together? 0 where they burn gas. | the rating plates | 7.2 kW | board.runs
cookerSocket | Socket at the cooker switch | yes | - | - | - | - | - | board.runs.feeds.withSocket
shower* | Electric shower | kW activePower | 0..11 | customer | How many kW stand on the electric shower? 0 where there is none. | the shower with its label | 8.5 kW | board.runs
secondShower | Second electric shower | kW activePower | 0..11 | customer | How many kW stand on a second electric shower? | the shower with its label | 0 kW | board.runs
immersionHeater | Immersion heater | kW activePower | 0..6 | customer | How many kW has the immersion heater? | its rating plate, or its switch | 3 kW | board.runs
electricHeating* | Electric heating | kW activePower | 0..20 | customer | How many kW have fixed electric heaters, all together? 0 where heating is by gas or oil. | one heater with its rating plate | 0 kW | board.runs
storageHeating | Storage heaters | kW activePower | 0..24 | customer | How many kW have storage heaters, all together? | one heater with its rating plate | 0 kW | board.runs
heatPump | Heat pump | A connectedCurrent | 0..40 | customer | What is the largest current of the heat pump, its own heater included? | the rating plate of the outdoor unit | 20 A | board.runs
otherLoad | Other large loads | kW activePower | 0..15 | customer | How many kW has anything else that is large: a hot tub, a kiln, a sauna? | the rating plates | 0 kW | board.runs
solar | Solar panels | kW activePower | 0..10 | customer | How many kW can the inverter of solar panels give? 0 where there are none. | the rating plate of the inverter | 0 kW | board.runs
solarDevice | Circuit-breaker of the solar panels | A deviceRating | 6..40 | customer | How many amperes stand on the switch of the consumer unit that is marked solar? | the switch marked solar | 16 A | board.runs
allListed* | Is that all? | yes | - | customer | Is everything named that the consumer unit feeds? | the board with its lid up, and the schedule | true | board.complete

= Charge point
chargeCurrent* | Charging current | A chargeCurrent | 6..32 | - | - | - | - | wanted.point.setting
chargePhases | Phases of the charge point | phaseCount | - | customer | Is the charge point to be for one phase or for three? | - | 1 | wanted.lines
outdoors* | Vehicle outdoors | yes | - | - | - | - | - | wanted.point.outdoors
detects6mA | Detects 6 mA direct current | yes | - | - | - | - | - | wanted.point.directCurrentDetection
openPen | Open-PEN detection | openPenDevice | - | - | - | - | - | wanted.point.openPenDevice
bidirectional* | Can feed back | yes | - | - | - | - | - | wanted.point.bidirectional
leakage | Standing leakage of the charge point | mA chargeCurrent | 0..6 | - | - | - | - | wanted.point.standingLeakage
loft | Route in loft or floor, on joists | m length | 0..40 | customer | How many metres of the cable run across a loft or between floors? Pace it out: one long step is a metre. | the loft or floor where it can run | 6 m | wanted.route
indoors* | Route indoors, clipped | m length | 0..40 | customer | How many metres run along walls indoors, garage and cupboards included? | each wall, from corner to corner | 11 m | wanted.route
wallsOutside* | Route outdoors, on walls | m length | 0..60 | customer | How many metres run along walls outdoors? | each wall, from corner to corner | 4 m | wanted.route
buried* | Route in the ground | m length | 0..60 | customer | How many metres run in the ground? 0 where nothing is dug. | the ground along the trench | 0 m | wanted.route
depth | Depth in the ground | mm depth | 450..1000 | firm | How deep is the cable to lie? | - | 600 mm | wanted.route.depth
insulated | Length within thermal insulation | m length | 0..3 | - | - | - | - | wanted.route.insulated
ambient | Ambient temperature | °C ambientTemperature | 10..45 | - | - | - | - | wanted.route.ambient
circuitsBeside | Circuits side by side | count | 1..8 | - | - | - | - | wanted.route.group.circuits
terminals | Temperature of the terminals | °C terminalTemperature | 70..90 | - | - | - | - | wanted.terminalTemperature

= Vehicle
energy | Energy for a night | kWh energyNeeded | 5..80 | customer | How many kWh are wanted for a night? Miles on a long day, divided by three and a half. | - | 30 kWh | wanted.vehicle.energy
vehicleCurrent | Largest current of the vehicle | A chargeCurrent | 6..48 | - | - | - | - | wanted.vehicle.onBoardCurrent
vehiclePhases | Phases of the vehicle | vehicle.onBoardPhases | - | - | - | - | - | wanted.vehicle.onBoardPhases
arrives | Plugged in at | clock | - | - | - | - | - | wanted.vehicle.arrives
leaves | Ready by | clock | - | - | - | - | - | wanted.vehicle.leaves
efficiency | Efficiency of charging | % chargeEfficiency | 80..95 | - | - | - | - | wanted.vehicle.efficiency

= The work
mounting | Mounting | work.mounting | - | - | - | - | - | work.mounting
walls | Walls to drill | count | 0..5 | - | - | - | - | work.wallsToDrill
outletHeight | Height of the outlet | mm length | 450..1400 | - | - | - | - | work.outletHeight
tenure | Owner or tenant | work.tenure | - | - | - | - | - | work.tenure
ownerAgrees | Owner agrees | yes | - | - | - | - | - | work.ownerAgrees
isolation | Who makes the tails dead | work.isolation | - | - | - | - | - | work.isolation
lead | Length of the charging lead | m length | 3..10 | - | - | - | - | work.lead
toInlet | From the outlet to the vehicle | m length | 0.5..10 | - | - | - | - | work.toInlet
dataConnection | Data connection | work.dataConnection | - | - | - | - | - | work.dataConnection
devicesToBeHad | Devices for the board | yes | - | - | - | - | - | work.devicesToBeHad
model | Make and model of the charge point | text | - | - | - | - | - | work.model
digging | Digging | work.digging | - | - | - | - | - | work.digging
surface | Surface | work.surface | - | - | - | - | - | work.surface
sensorCable | Cable of the current sensor | m length | 0..60 | - | - | - | - | work.sensorCable
travelMinutes | Travel, there and back, in minutes | count | 0..240 | - | - | - | - | work.travelMinutes
`;
