/**
 * The register of facts: a line for every field of a survey, by record.
 *
 *     field | title | whom to ask | question | what to photograph | example | what else to know
 *
 * Whom to ask: `customer`, `operator` (of the network), `site` (seen or measured there by a competent person), `maker`
 * (data sheet, instructions, marking) or `firm` (its own choice). A dash stands for nothing. Units, limits and whether
 * a field may be unknown are not repeated here: they follow from the vocabulary and from `shapes.ts`.
 */
export const registerRows = `
= survey
format | Format | firm | Which format is the document in? | - | survey/1 | -
about | The job | firm | What is the job? | - | - | -
code | Wiring rules | firm | Which edition of the wiring rules applies? | - | - | There is no default: the edition is stated.
supply | Supply | site | What comes into the building, up to the main switch? | - | - | -
board | Main board | site | What is at the consumer unit or main distribution board? | - | - | -
wanted | Charge points wanted | customer | Which charge points are wanted? | - | - | -
options | Choices of the designer | firm | Does the firm design to limits of its own? | - | - | -
demand | Choices on demand | firm | How is the demand of what is there to be taken? | - | - | -
work | The work | firm | What is known of the work on site? | - | - | For material and hours only.

= about
title | Title | firm | What is the job to be called? | - | Larch Cottage (invented) | -
reference | Reference | firm | What is your own reference for the job? | - | INV-001 | -
invented | Invented example | firm | Is this an invented example? | - | true | -
date | Day of the survey | firm | On which day was the survey made? | - | 2026-09-21 | Year, month, day.
country | Country | firm | In which country are the premises? | - | GB | It decides whose connection rules apply.
premises | Kind of premises | customer | Is it a home, a shop, a hotel, a workplace, or a block of flats? | the building from the road | dwelling | -
dwellings | Dwellings on the supply | customer | How many flats does the supply feed? | - | 6 | For flats only.

= code
id | Wiring rules | firm | Which wiring rules apply? | - | BS 7671 | -
edition | Edition | firm | Which edition applies? | - | 2018+A2:2022 | -

= supply
operation | Grid or island | firm | Is the installation connected to the public network? | - | grid | An island is refused by name.
currentKind | Alternating or direct current | firm | Is it alternating current? | - | ac | Direct current is refused by name.
system | Earthing arrangement | site | Which earthing arrangement is marked at the cut-out, or what does the earthing conductor run to: the cut-out, the sheath of the service cable, or a rod? | the cut-out and everything that is connected to it, with all labels | TN-C-S | TN-C-S is what the trade calls PME.
phases | Phases | customer | Does one brown or red wire come to the meter, or do three? | the meter with the cables into and out of it | 1 | Three fuses side by side at the cut-out mean three phases.
nominalVoltage | Nominal voltage, line to earth | operator | What is the nominal voltage between line and earth? | - | 230 V | -
frequency | Frequency | operator | What is the frequency of the supply? | - | 50 Hz | -
externalImpedance | External earth fault loop impedance Ze | site | What is Ze, measured at the origin with the earthing conductor disconnected from the main earthing terminal? | the display of the tester with its leads in place | 0.35 Ω | Never inside another loop; parallel paths give a reading that is too low.
externalImpedanceConfirmed | Ze confirmed by the network operator | operator | Does the network operator confirm an external impedance above the customary one in writing? | the letter | true | -
separateEarthConfirmed | Separate earth confirmed by the network operator | operator | Does the network operator confirm that neutral and earth are separate conductors all the way to its transformer? | the letter | true | Of a TN-S supply. Cables in the street are repaired with combined conductors; without the letter it is treated as PME.
prospectiveCurrent | Prospective fault current Ipf | site | What is the prospective fault current, measured at the origin: the larger of line to neutral and line to earth, on three phases of all of them? | the display of the tester | 1.2 kA | -
cutOut | Service cut-out | site | Which fuse stands in the cut-out? | the cut-out, close up, so that the marking can be read; do not break the seal | - | -
cutOutSound | Cut-out sound | site | Is the cut-out free of cracks, scorching, leaking compound and exposed metal? | the whole cut-out from the front and from below | true | -
looped | Looped service | operator | Does the service cable go on from this cut-out to a neighbour, or come from one? | the cut-out from below: one service cable or two | false | Two service cables at one cut-out speak for a looped service.
metered | Metered | customer | Is there an electricity meter? | the meter | true | -
tails | Meter tails | site | What size are the tails between the meter and the consumer unit? | the tails with a ruler beside them, and the printing on their sheath | 25 mm² | -
tailsFaultProtected | Tails protected against fault current by the cut-out fuse | operator | Does the network operator let its fuse be relied on to protect the tails? | - | true | -
earthingConductor | Earthing conductor | site | What size is the green-and-yellow conductor from the means of earthing to the main earthing terminal? | the conductor with a ruler beside it | 16 mm² | -
earthingConductorLaid | Where the earthing conductor runs | site | Does the earthing conductor run above ground, or is it buried, and how is it protected there? | its whole way, as far as it can be seen | above-ground | -
supplyNeutral | Neutral of the supply | operator | What is the size of the neutral conductor of the service? | - | 25 mm² | Main bonding on PME is sized from it.
bonding | Main bonding | site | Which metal services are bonded to the main earthing terminal, each with what size? | each bonding clamp at its pipe, with its label | - | -
noExtraneousParts | No metal services or structure | site | Did somebody look for metal water, gas or oil pipes and structural metal that come into the building, and find none? | the water stop valve and the gas meter | false | -
electrode | Earth electrode | site | Is there an earth rod, and what was measured at it? | the rod with its clamp and label | - | -
meterPoint | Meter-point number | customer | Which number of 13 digits stands under the S on the electricity bill? | the page of the bill with that number | 1412345678901 | -
specialLocation | Special location | customer | Is it a caravan park, a marina, a construction site, a filling station, a farm, a swimming pool, or another place with rules of its own? | - | none | A combined neutral and earth is barred in some; for others a specialist decides.
transformer | Transformer | operator | Is it known which transformer supplies the premises, and what stands on its plate? | the plate | - | Of the owner’s own, or where the network operator says.
meteredDemand | Measured demand | customer | What is the highest demand that was measured, and over what time? | the yearly overview of half-hour readings | - | Half-hour readings of a year from the supplier say more than any estimate.

= transformer
rating | Rated power | site | Which rated power stands on its plate? | the plate | 500 kVA | -
voltage | Rated voltage of the low side | site | Which voltage between lines, without load, stands on its plate for the low side? | the plate | 433 V | -
impedanceVoltage | Impedance voltage | site | Which impedance voltage, in per cent, stands on its plate? | the plate | 4.75 % | -
loss | Loss at rated current | maker | Which loss at rated current does its test sheet give? | the test sheet | 5.5 kW | Also called load loss or copper loss.
gridFaultPower | Fault level of the grid | operator | Which three-phase fault level has the grid at its high side? | - | 150 MVA | A lowest and a highest, where the network operator gives both.
owner | Owner | customer | Whose is the transformer? | - | operator | -
parallel | Transformers in parallel | site | How many of this kind work in parallel? | the switchboard | 2 | One when left out.
beside | Others beside it | site | Which unlike transformers work in parallel with it? | the plates | - | Of the same voltages and vector group, on taps of the same ratio.
harmonicLossFactor | Factor K of harmonics | firm | By which factor do harmonics raise the load that it feels? | - | 1.08 | By EN 50464-3 from the harmonics of the load; a sinusoidal load when left out.
atOrigin | Origin at its terminals | site | Does the main board stand right at the terminals of the transformer? | both of them | true | -
cable | Cable to the origin | site | Which cable runs from the transformer to the origin? | its marking | - | -

= besideTransformer
rating | Rated power | site | Which rated power stands on its plate? | the plate | 315 kVA | -
impedanceVoltage | Impedance voltage | site | Which impedance voltage, in per cent, stands on its plate? | the plate | 4 % | -
loss | Loss at rated current | maker | Which loss at rated current does its test sheet give? | the test sheet | 3.9 kW | Also called load loss or copper loss.

= wayBeside
id | Name | site | What is this way called? | - | second feeder | -
device | Device | site | Which device stands at its start? | its front with the marking | - | -
stretches | Route | site | How does it run, stretch by stretch? | - | - | In cable like that of the run.

= transformerCable
material | Metal | site | Copper or aluminium? | the marking of the cable | aluminium | -
length | Length | site | How long is the cable from the transformer to the origin? | - | 40 m | -
area | Line conductor | site | Which cross-section has a line conductor? | the marking of the cable | 240 mm² | -
protectiveArea | Protective conductor | site | Which cross-section has the protective or combined conductor? | the marking of the cable | 120 mm² | -
parallel | In parallel | site | How many conductors does each line have? | - | 2 | One when left out.

= meteredDemand
current | Highest demand measured | customer | What is the highest demand that was measured, per line? | the reading | 27.8 A | 3.2 kWh in half an hour at 230 V are 27.8 A.
about | What it rests on | customer | Over what time, and by what, was it measured? | - | half-hour readings from October 2025 to September 2026 | -

= bonded
what | What is bonded | site | Which service or part is bonded? | - | water | -
area | Size of the bonding conductor | site | What size is the bonding conductor? | the conductor with a ruler beside it | 10 mm² | -

= electrode
resistance | Resistance of the electrode | site | What resistance to earth was measured at the electrode? | the display of the tester | 45 Ω | -
soilResistivity | Resistivity of the soil | site | What is the electrical resistivity of the soil? | - | 100 Ω·m | To estimate the resistance before the rod is driven.
separation | Distance to other earthed metal | site | How far is the electrode from metal that is earthed to another system, under and above the ground? | the surroundings of the place | 3 m | -

= device
kind | Kind of fuse or circuit-breaker | site | Which standard, and for a circuit-breaker which curve, is printed on it? | its front with the marking | - | -
rating | Rated current | site | How many amperes are printed on it? | its front with the marking | 32 A | -
breakingCapacity | Breaking capacity | maker | Which breaking capacity is marked on it, in a rectangle or in kA? | the marking | 6 kA | -
conditionalRating | Conditional rating | maker | Up to which fault current does the maker allow it behind the fuse ahead? | - | 16 kA | -
energyClass | Energy limiting class | maker | Which energy limiting class, 1, 2 or 3, is marked in the small square? | the marking | 3 | -
groupingFactor | Rated diversity of devices side by side | maker | By what factor does the maker reduce the rated current of devices that are loaded side by side? | - | 0.8 | 1 where the maker asks for no reduction.

= residual
position | Where it is | site | Does it stand at the origin, at the start of the circuit, along it, or inside the equipment? | the board with its cover closed | origin-of-circuit | -
type | Type | site | Which type is marked on it: AC, A, F or B? | the wave symbols on its front | A | One wave: AC. Wave and half waves: A.
rating | Rated residual operating current | site | Which residual operating current, such as 0.03 A, is printed on it? | its front with the marking | 30 mA | -
ratedCurrent | Rated current of the residual current device | site | How many amperes is it rated for? | its front with the marking | 63 A | -
delay | Time delay | site | Is it marked S (selective)? | its front with the marking | general | -
delayTime | Setting of the delay | site | To what time is its delay set? | the setting dial | 0.2 s | -
opensAllLive | Opens all live conductors | maker | Does it open the neutral as well as the line? | the terminals at top and bottom | true | Double pole, or four poles on three phases.
bidirectional | For current in both directions | maker | Does the maker state that it may be fed from either side? | arrows, or LINE and LOAD, at its terminals | true | -
pointsServed | Charge points behind it | site | How many charge points stand behind it? | - | 1 | -
overloadDeclared | Overload protection declared | maker | Does the maker name the fuse or breaker that protects it against overload? | - | true | -
serves | Circuits that it serves | site | Which circuits stand behind it? | the board with its schedule | - | -

= cable
construction | Construction | site | Is it flat twin and earth, single cores, sheathed multicore, armoured, or flexible? | the cable at an end, with the printing on its sheath | flat-twin-and-earth | -
material | Conductor | site | Are the conductors copper or aluminium? | - | copper | -
insulation | Insulation | site | Is the insulation PVC, XLPE or rubber? | the printing on the sheath | thermoplastic-70 | -
cores | Cores | site | How many cores has it, a bare protective conductor not counted? | the cable at an end | 2 | -
area | Size | site | What is the cross-section of a line conductor? | the printing on the sheath, or an end with a ruler beside it | 6 mm² | -
sizeName | Name of the size | maker | What is the size called, where it is not called by its area? | - | 22/0.3 | -
loadedCores | Cores that carry load together | site | How many cores of the cable carry load together? | - | 3 | -
parallel | Conductors in parallel | site | How many conductors in parallel has each line? | - | 1 | -
protective | Protective conductor | site | What serves as protective conductor: a core, a bare core, armour, conduit, or one beside it? | the earth terminal with its connections | bare-core | -
protectiveArea | Size of the protective conductor | site | What is the cross-section of the protective conductor? | - | 2.5 mm² | -
protectiveImpedance | Impedance of armour or conduit | maker | What impedance for each metre does the maker state at 20 °C? | - | 2.5 mΩ/m | -
protectiveMaterial | Material of the protective conductor | site | Is the protective conductor copper, aluminium or steel? | - | copper | -

= tray
support | Kind of tray or ladder | site | What do the cables lie on? | the tray | perforated tray | -
trays | Trays above each other | site | How many trays lie above each other? | the trays | 1 | -
spaced | Spaced | site | Are the cables a diameter apart? | the trays | false | -

= group
arrangement | How the circuits lie together | site | How do the cables lie beside each other? | the cables side by side | bunched | -
circuits | Circuits in the group | site | How many circuits run together here, this one included? | the cables side by side | 1 | 1 where it runs alone.
spacing | Clear spacing | site | How far apart are they? | - | 250 mm | For cables in the ground.
lightlyLoaded | Of these, lightly loaded | site | How many of them never carry more than 30 % of what they could? | - | 0 | -
unequal | Of very unequal size | site | Are the cables of very unequal size? | - | false | -
tray | Tray or ladder | site | What tray do they lie on? | the tray | - | -
overloads | Overloaded together | firm | Can all of them be overloaded at a time? | - | not-simultaneous | -

= stretch
name | Name of the section | site | What do you call this section of the route? | the section from end to end | garage wall | -
length | Length | site | How long is this section, measured along the cable? | the section from end to end | 11 m | -
method | Reference method | site | How is the cable fixed or laid along this section? | the wall, ceiling, loft or ground where it runs | C | The letter or number of the tables of current-carrying capacity.
ambient | Ambient temperature | site | How warm does the air, or the ground, get where the cable lies? | - | 30 °C | -
cable | Cable of this section | site | Is the cable of this section another than that of the circuit: which? | the cable and the joint at its beginning | - | Left out where it is the cable of the circuit.
existing | Cable there already | site | Does the cable of this section lie there already, and is it kept? | - | false | -
jointAccessible | Joint accessible | site | Can the joint at the beginning of this section be got at, or is it of a kind that need not be: made for the ground, encapsulated, compressed, or maintenance-free? | the joint | true | Where the cable changes, or one is joined to another of its kind.
group | Circuits beside it | site | Which other circuits run beside it? | the cables side by side | - | Not known when it is left out; 1 circuit where it runs alone.
insulated | Length within thermal insulation | site | Over what length does thermal insulation surround the cable on all sides? | the loft or wall where it runs | 0 m | -
drum | On a drum | site | Does the cable stay wound on a drum while in use? | - | none | -
formation | How single cores lie | site | Do the single cores lie flat, in a triangle, or apart? | the cables | trefoil | -
soilResistivity | Thermal resistivity of the soil | site | Is the soil wet, damp or dry: what is its thermal resistivity? | the ground along the trench | 2.5 K·m/W | -
depth | Depth | site | How deep does it lie below the surface? | - | 600 mm | -
concealedShallow | Concealed less than 50 mm deep | site | Is it concealed in a wall or partition less than 50 mm deep, without earthed metal around it? | the wall | false | -
metalParts | Metal inside the wall | site | Has the wall metal studs or other metal parts inside? | - | false | -
containment | Containment | site | Is it clipped, in conduit, in trunking, on tray, in a duct, buried, or on a catenary wire? | the section | clipped | For material and hours.
outdoors | Outdoors | site | Is this section outdoors? | the section | false | -

= run
id | Name of the circuit | site | What is the circuit called on the schedule? | the schedule on the door of the board | cooker | -
lines | Line conductors | site | Which line conductors does it use? | - | L1 | -
device | Fuse or circuit-breaker | site | What protects the circuit? | the board with its cover closed | - | -
residual | Residual current devices | site | Which residual current devices stand along it? | the board with its cover closed | - | -
noResidual | No residual current device along it | site | Has somebody looked and found no residual current device along it? | the board with its cover closed | true | -
ring | Ring | site | Is it a ring final circuit? | - | false | -
beside | Ways beside it | site | Which other cables run beside it to the same board, each from a device of its own? | the devices at both boards | - | Of like cable, each with its own length.
existing | Existing | site | Is it there already? | - | true | Of an existing circuit that feeds no board, cable and sections may be left out.
outOfUse | Out of use | customer | Is the circuit out of use, so that its cable or way may be used anew? | - | false | -
fromTails | Ahead of the board | site | Does it leave the tails behind a switch-fuse in an enclosure of its own, ahead of the board? | meter, tails and board in one picture | false | Of a circuit that is there already asked where it is left out.
jointsAccessible | Joints along what is there | site | Has somebody followed what is there of the cable, and found no joint but such as can be got at or need not be: made for the ground, encapsulated, compressed, or maintenance-free? | its way from the board to its end | true | Of a circuit, or sections, that were there before.
cable | Cable | site | Which cable is it? | the cable where it enters the board | - | -
stretches | Sections of the route | site | Which way does it go, section by section? | each section | - | -
thirdHarmonic | Third-harmonic content | site | What share of the line current is third harmonic? | - | 0 % | -
terminalTemperature | Temperature of the terminals | maker | For which conductor temperature are the terminals of device and equipment made? | - | 70 °C | -
bathOrShower | Passes a room with bath or shower | site | Does it serve or pass through a room with a bath or shower? | - | false | -
pointsShare | Why charge points share the circuit | firm | By what do several charge points share the circuit safely? | - | load management of the maker | -
feeds | What it feeds | site | What does it feed? | what it feeds, with rating plate | - | -

= load
kind | Kind | firm | What is it: a board, a load or a charge point? | - | load | -
id | Name of the load | site | What is it called? | - | cooker unit | -
purpose | What it is for | customer | What is it: lighting, sockets, a cooker, a shower, heating? | the rating plate | cooking | -
current | Connected load | customer | How many amperes does it take at full power? Its rating plate says kW: at 230 V, each kW is 4.35 A. | the rating plate | 31.3 A | Per line conductor. Of dwellings it is left out.
lines | Line conductors | site | Which line conductors does it use? | - | L1 | -
withSocket | Socket-outlet at the cooker unit | customer | Has the cooker switch a socket beside it? | the cooker switch | true | -
accessories | Standard of the socket-outlets | site | Are the sockets ordinary three-pin ones? | one of the sockets | BS 1363 | -
plugged | Connected by plug | customer | Is it connected by a plug? | its connection | false | Of batteries and solar inverters.
socketRating | Rating of the socket-outlets | site | For how many amperes are the sockets made? | one of the sockets | 13 A | -
residualType | Residual current device that its maker permits | maker | Which type of residual current device does its maker permit ahead of it? | its instructions | A | -
powerFactor | Power factor | maker | What is its power factor? | the rating plate | 0.95 | -
startCurrent | Largest current for a moment | maker | How many amperes does it draw when it starts, or while it welds? | the rating plate | 90 A | Per line conductor, with its starter.
workingShare | Share of the time at work | maker | For what share of the time does it draw that current? | the rating plate | 35 % | Of welders: the duty cycle on the plate. The connected load is then the largest effective current.
holds | What it keeps when the voltage falls | maker | Does it keep its current or its power when the voltage falls? | - | power | -
at | Where it is tapped | site | How far along the circuit is it connected? | - | 12 m | At the end when left out.
standardCircuit | Standard final circuit | site | Is it a standard final circuit of a dwelling? | - | true | -
dwellings | Dwellings | customer | Does it stand for several dwellings on a riser or a floor? | - | - | For the purpose of dwellings; the connected load follows.

= dwellingGroup
count | How many dwellings | customer | How many dwellings hang on this place? | the meters | 8 | One entry for each floor or tap-off, and for each kind of dwelling.
each | Largest current of one dwelling | operator | For how many amperes is the cut-out of one dwelling, or the contract? | one of the cut-outs | 60 A | Per line conductor.
heating | How they are heated | customer | How are the dwellings heated? | - | not-electric | -
electricWater | Hot water by electricity | customer | Is their hot water heated by electricity: a cylinder or instantaneous heaters? | the hot water cylinder | false | -
phases | Phases of one dwelling | site | Does one line conductor come to the meter of a dwelling, or do three? | one of the meters | 1 | Single-phase when left out.

= chargePoint
kind | Kind | firm | What is it: a board, a load or a charge point? | - | charge-point | -
id | Name of the charge point | customer | What is the charge point to be called? | the place where it is to hang, from three metres away | drive | -
lines | Line conductors | firm | Which line conductors is it connected to? | - | L1 | -
setting | Largest current | customer | How fast should it charge? 7 kW on one phase is 32 A. | - | 32 A | Per line conductor.
minimum | Smallest current | maker | What is the smallest current that it can offer? | - | 6 A | -
outdoors | Vehicle outdoors | customer | Can a vehicle that stands outdoors be charged from it? | the place where the vehicle stands | true | Wherever the charge point itself hangs.
mode | Charging mode | maker | Is it a charge point proper (mode 3), or does it charge with direct current (mode 4)? | - | 3 | -
socket | Socket-outlet | site | Of a mode 2 cable: which socket-outlet is it plugged into? | the socket-outlet | BS 1363 | Of a unit of mode 4 where it is plugged in.
socketRating | Rated current of the socket-outlet | site | Of an industrial socket-outlet: what current is marked on it? | the socket-outlet | 16 A | -
directCurrentDetection | Detection of 6 mA direct current | maker | Does the charge point detect 6 mA of direct fault current? | the data sheet | true | -
residual | Residual current device inside it | maker | Is a residual current device built into the charge point? | the data sheet | - | -
noResidual | No residual current device inside it | maker | Does the maker say that no residual current device is built in? | the data sheet | true | -
openPenDevice | Open-PEN detection built in | maker | Does the charge point detect an open PEN conductor, and by what? | the data sheet | open-pen-detection-window | -
openPenEqualSafety | Equal safety of open-PEN detection of another kind | maker | Does its maker show in writing that it gives safety equal to the other kinds, and does not close again on the fault? | the declaration of the maker | true | -
earthing | Earthing arrangement chosen | firm | How is the charge point to be earthed? | - | tt-earthing | The permitted ways are worked out when this is left out.
electrode | Electrode of its own | site | Where can an earth rod be driven for the charge point? | the ground near the place | - | -
feedSeparated | Feed separated from its earth | firm | Are armour and protective conductor of the feed kept apart from the earth of the charge point? | - | true | -
vehiclesSeparated | Vehicles behind its isolating transformer | firm | How many vehicles does the isolating transformer supply? | - | 1 | -
bidirectional | Can feed back | maker | Can it feed back from the vehicle to the house? | the data sheet | false | -
standingLeakage | Standing protective-conductor current | maker | What current flows in its protective conductor in service? | the data sheet | 2 mA | -
power | Rated power | maker | What rated power does the maker state? | the data sheet | 7.4 kW | -
directPower | Direct-current power | maker | Of mode 4: what is the largest direct-current power that it is set to give? | the rating plate | 50 kW | -
efficiency | Efficiency | maker | Of mode 4: what is its efficiency at full power? | the data sheet | 0.95 | -
powerFactor | Power factor | maker | Of mode 4: what is its power factor at full power? | the data sheet | 0.98 | -

= mainSwitch
rating | Rated current of the main switch | site | How many amperes are printed on the main switch? | the main switch with its marking | 100 A | -
overloadDeclared | Overload protection declared | maker | Does the maker name the fuse that protects the main switch against overload? | - | true | -
fuseAhead | Fuse ahead of the main switch | site | What is the fuse of a switch-fuse rated at that stands in the tails ahead of the board? | its label | 80 A | Not the fuse of the cut-out.
noFuseAhead | No fuse ahead of the main switch | site | Has somebody looked, and found no switch-fuse ahead of the board: none in the tails, nor at the end of its feeder? | meter, tails and board in one picture | true | Apart from the fuse of the cut-out.

= control
name | Name of the load control | firm | What is the load control called? | - | limiter at the origin | -
limit | Limit | firm | To what current does it hold the supply, per line? | - | 60 A | -
controls | What it controls | firm | Which charge points does it hold back? | - | drive | -
reaction | Time in which it makes room | maker | Within what time has the limiter made room after the load has risen? | the data sheet | 20 s | From the rise of the load until charge points and vehicles have followed.
keepsFuse | The fuse is kept from operating, by the maker | maker | Do the instructions of the limiter say that, set to the rating of the fuse, it keeps the fuse from operating? | its instructions | true | Set as it will be set, ahead of a fuse of that kind.
fallback | Current without its sensor | maker | What current does the charge point still offer when the limiter has lost its sensor? | the instructions | 6 A | 0 A where it pauses.

= board
kind | Kind | firm | What is it: a board, a load or a charge point? | - | board | -
id | Name of the board | site | What is the board called? | the board, cover closed and open | consumer unit | -
at | Where it is tapped | site | How far along the riser or busbar that feeds it is the board connected? | the tap-off box, and the drawing of the riser | 12 m | At the end when left out.
mainSwitch | Main switch | site | Which main switch has the board? | the main switch with its marking | - | -
conditionalRating | Conditional rating of the assembly | maker | Which fault current is marked on the enclosure? | the label inside the door | 16 kA | -
rating | Rated current of the assembly | maker | Which rated current is marked on the enclosure? | the label inside the door | 100 A | -
residual | Residual current devices of the board | site | Which residual current devices has the board, and what do they serve? | the board with its cover closed | - | -
noResidual | No residual current device on the board | site | Has somebody looked and found no residual current device on the board? | the board with its cover closed | true | -
control | Load control | site | Is there a load limiter already? | the limiter with its clamp | - | -
spareWays | Spare ways | customer | How many blanks, where no switch sits, has the board? | the board with its lid up | 2 | -
surgeProtection | Surge protection | site | Is a surge protective device fitted? | the board with its lid up | true | -
detached | In another building | customer | Is the board in another building than the meter? | - | false | -
extraneousParts | Metal services at this building | site | Do metal pipes or structural metal come into this building? | where pipes come in | false | -
bonding | Bonding at this building | site | What size is the bonding conductor at this building? | the clamp at the pipe | 10 mm² | -
complete | All circuits listed | site | Are all circuits of the board listed? | the board with its lid up, and the schedule | true | Without it no demand can be judged.
runs | Circuits | site | Which circuits leave the board? | the schedule | - | -

= wanted
id | Name of the charge point | customer | What is the charge point to be called? | the place where it is to hang, from three metres away | drive | -
count | How many alike | firm | How many charge points of this kind are wanted at this board, alike in everything but their names? | - | 40 | One when left out; the route is then that of the furthest. They are called by the name and a number from 1.
inTurn | Lines in turn | firm | Do the charge points of the group take the line conductors in turn, from the one named? | - | true | -
from | Fed from | firm | From which board is it to be fed? | - | consumer unit | -
lines | Line conductors | firm | Which line conductors is it to use? | - | L1 | -
point | Charge point | customer | Which charge point is it to be? | the place where it is to hang | - | -
device | Fuse or circuit-breaker to use | firm | Which kind of fuse or circuit-breaker does the firm fit? | - | - | Its rating is designed.
residual | Residual current devices to use | firm | Which residual current device does the firm fit? | - | - | -
jointsAccessible | Joints along what is there | site | Has somebody followed what is there of the cable, and found no joint but such as can be got at or need not be: made for the ground, encapsulated, compressed, or maintenance-free? | its way from the board to where the new cable begins | true | Where sections of the route were there before.
bathOrShower | Passes a room with bath or shower | site | Does the route pass through a room with a bath or shower? | - | false | -
thirdHarmonic | Third-harmonic content | maker | What share of its current is third harmonic? | - | 0 % | -
cables | Cables to choose from | firm | Which cables may be used, the best liked first? | - | - | Their size is designed.
route | Route | site | Which way does the cable go, section by section? | each section of the route, from the board to the charge point | - | -
terminalTemperature | Temperature of the terminals | maker | For which conductor temperature are the terminals of device and charge point made? | - | 70 °C | -
vehicle | Vehicle | customer | What is to be charged, and when? | - | - | -

= vehicle
energy | Energy for a night | customer | How many miles are driven on a long day? About three and a half miles take 1 kWh. | - | 30 kWh | Left out where the battery is described.
battery | Battery | customer | How full does the battery come home, and how full is it to leave? | - | - | Instead of the energy for a night.
onBoardCurrent | Largest current of the vehicle | maker | At how many amperes can the vehicle charge, per line? | the page of the handbook | 32 A | -
onBoardPhases | Phases of the vehicle | maker | On how many phases can the vehicle charge? | the page of the handbook | 1 | -
arrives | Plugged in at | customer | At what time is it plugged in? | - | 18:30 | -
leaves | Ready by | customer | At what time does it have to be ready? | - | 07:00 | -
efficiency | Efficiency of charging | maker | What share of the energy taken reaches the battery? | - | 90 % | -

= battery
holds | Battery size | maker | How much energy does the battery hold, usable, when full? | the page of the handbook | 60 kWh | -
onArrival | Charge on arrival | customer | How full is the battery when the vehicle is plugged in after a long day? | the display of the vehicle | 30 % | -
onDeparture | Charge on departure | customer | How full does the battery have to be when the vehicle leaves? | - | 80 % | -

= options
dropLimit | Voltage drop of the firm's own | firm | To what voltage drop does the firm design, where that is less than the rules allow? | - | 3 % | -
testTemperature | Temperature at the tests | firm | At what temperature are the readings to be expected? | - | 15 °C | -
acceptMemoryFigures | Accept recalled figures | firm | Are figures that are recalled rather than seen to count as known? | - | true | -
makersLetThrough | Let-through energy of the maker, A²s | maker | Which let-through energy does the maker state at the fault current that can flow here? | - | 5000 | -
fuseEdition | Edition of the fuse tables | firm | Which printing of the fuse tables is to be used? | - | 2011 | -
initialTemperature | Temperature before the fault | firm | At what conductor temperature does the fault begin? | - | 70 °C | -
dropTemperature | Temperature for the voltage drop | firm | May the voltage drop be worked out at the running temperature of the conductor, and with which neighbours? | - | group-at-same-load | -
premises | Premises and wishes of the owner | customer | What kind of premises is it, and what does the owner wish of surge protection? | - | - | -

= premises
kind | Kind of premises | customer | Is it an ordinary home, a house in multiple occupation, student accommodation, a care home, a tall block of flats, or something else? | the building from the road | dwelling | It decides on arc detection.
overvoltageSerious | Overvoltage would be serious | site | Could an overvoltage from lightning or switching hurt somebody, or stop a service that many rely on? | - | false | -
surgeProtectionDeclined | Surge protection declined | customer | Has the owner said in writing that surge protection is not wanted? | the letter | false | -
arcDetection | Arc fault detection | firm | Are arc fault detection devices fitted? | - | false | -


= demand
meteredMargin | Margin on the measured demand | firm | By how much may a later year exceed the demand that was measured? | - | 10 % | -
governing | Method that governs | firm | Which method of demand is to govern? | - | - | -
halfHours | Half-hour readings | operator | Are there half-hour readings of the meter, for a year if possible? | - | - | -
dwellings | Constants for dwellings | operator | Which constants does the network operator take for the demand of many dwellings? | - | - | All dwellings of one kind; there are no built-in ones.
assembly | Standard of the board | maker | To which standard was the board made? | the label inside the door | IEC 61439-3 | -
factors | Factors of the designer | firm | Which factors of utilisation and of simultaneity does the designer take? | - | - | -

= halfHours
from | Beginning of the first half hour | operator | When does the first half hour begin? | - | 2025-10-01T00:00:00Z | With the offset from universal time.
wattHours | Energy of each half hour, Wh | operator | What energy was taken in each half hour, in order? | - | 350 | -
season | What they cover | operator | Which time of the year do the readings cover? | - | October 2025 to September 2026 | -
margin | Margin on the readings | firm | By how much may a later year exceed the highest reading? | - | 10 % | -

= dwellingConstants
afterDiversity | Demand after diversity | operator | Which demand after diversity does the network operator take for a dwelling of this kind? | - | - | -
coincidence | Coincidence that falls with the number | operator | Which largest demand of one dwelling, and which coincidence of very many, does the network operator take? | - | - | -
energy | Peak from energy | operator | Which coefficients does the network operator take for the peak from the energy of a year? | - | - | -

= afterDiversity
demand | Demand of one of very many dwellings | operator | Which demand after diversity does the network operator take for one dwelling? | - | 2 kW | -
constant | Constant term | operator | Which constant does the network operator add for small numbers? | - | 8 kW | -
unbalance | Allowance for unbalance | operator | By which factor does the network operator allow for lines that are loaded unevenly? | - | 1.1 | -

= coincidence
largest | Largest demand of one dwelling | operator | Which largest demand of one dwelling does the network operator take? | - | 9 kW | -
limit | Coincidence of very many | operator | Which coincidence of very many dwellings does the network operator take? | - | 0.2 | -

= dwellingEnergy
each | Energy of one dwelling in a year | operator | How much energy does one dwelling use in a year? | - | 3500 kWh | -
linear | Coefficient of the energy | operator | Which coefficient of the energy does the network operator take? | - | 0.0003 | In kW for each kWh.
root | Coefficient of its root | operator | Which coefficient of the root of the energy does the network operator take? | - | 0.025 | In kW for the root of each kWh.

= demandFactors
utilisation | Factors of utilisation, by purpose | firm | What share of its connected load does each kind of load take? | - | - | -
simultaneity | Factors of simultaneity, by board | firm | What share of its loads does each board take at a time? | - | - | -


= work
mounting | Mounting | customer | Is the charge point to hang on a wall or stand on a post? | the place | wall | -
wallsToDrill | Walls to drill | site | Through how many walls does the cable go? | each wall from both sides | 1 | -
newEnclosure | New enclosure | site | Is an enclosure beside the board needed, because it has no way left? | the board and the wall around it | false | -
electrode | Earth electrode to install | firm | Is an earth electrode to be installed? | - | false | -
replaceTails | Replace the tails | firm | Are the tails to be replaced? | - | false | -
digging | Digging | customer | Is the trench dug by hand or by machine? | the ground along the trench | hand | -
surface | Surface | customer | Does the trench go through soil or turf, through paving, or through concrete or asphalt? | the ground along the trench | paving | -
sensorCable | Cable of the current sensor | site | How long is the way from the meter tails to the charge point for a sensor cable? | - | 15 m | -
sensorPossible | Current sensor on the tails | site | Can a current sensor be fitted on the meter tails and joined to the charge point, by cable or by radio? | the tails, and the way from them to the charge point | true | Without one no limiter at the origin is offered.
limiterReaction | Time in which the limiter makes room | maker | Within what time has the limiter made room after the load has risen? | the data sheet | 20 s | From the rise of the load until charge points and vehicles have followed.
limiterKeepsFuse | The limiter keeps the fuse from operating, by its maker | maker | Do the instructions of the limiter say that, set to the rating of the fuse, it keeps the fuse from operating? | its instructions | true | Set as it will be set, ahead of a fuse of that kind.
limiterFallback | Current of the limiter without its sensor | maker | What current does the charge point still offer when the limiter has lost its sensor? | the instructions | 6 A | 0 A where it pauses.
supplyChange | Change by the network operator | firm | Does the network operator change the supply? | - | larger-fuse | -
travelMinutes | Travel, there and back, in minutes | firm | How many minutes does the journey take, there and back? | - | 40 | -
outletHeight | Height of the outlet | customer | How high above the ground is the outlet to be? | - | 900 mm | -
tenure | Owner or tenant | customer | Do you own the building, rent it, or share it with other owners? | - | owner-occupied | Of a building that is rented or shared somebody else has to agree.
ownerAgrees | Owner agrees | customer | Does the owner, or whoever manages the building, agree in writing? | the letter | true | -
isolation | Who makes the tails dead | customer | Is there a switch between the meter and the consumer unit, or has somebody to come and draw the fuse? | the meter with the cables into and out of it | supplier | For work ahead of the main switch only. Nobody but the supplier or the network operator breaks a seal or draws the fuse.
lead | Length of the charging lead | maker | How long is the charging lead? | - | 5 m | -
toInlet | From the outlet to the vehicle | customer | How many metres of lead does it take from the charge point to the charging inlet, with the car parked as usual? | the parked car and the place of the charge point, in one picture | 3.5 m | -
dataConnection | Data connection | customer | How is the charge point to reach the internet: by cable, by wireless network, by mobile network, or not at all? | - | wireless | -
devicesToBeHad | Devices for the board | maker | Can the device that the circuit needs still be had for this board, from the maker of the board? | the label inside the door | true | Devices of another make only as the maker of the board declares.
model | Make and model of the charge point | firm | Which charge point is to be fitted? | - | as quoted | -
`;
