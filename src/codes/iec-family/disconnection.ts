import {
  type CheckResult,
  factValue,
  isMissing,
  type Known,
  notDetermined,
  notRequired,
  type Sheet,
} from '../../core/index.js';
import type { EarthingSystem } from '../../installation/index.js';
import { loopImpedanceLimitOf } from '../../physics/index.js';
import { type Ohms, ohms, ratio, type Seconds } from '../../units/index.js';
import type { CircuitCase, Rule } from '../wiring-code.js';
import {
  automaticDisconnection,
  electrodeStable,
  overcurrentDisconnects,
  overcurrentPreferred,
} from './disconnection-checks.js';
import { writeLoopImpedance } from './fault-loop.js';
import { restsOnArmour } from './loop-impedance.js';
import { type FuseCurrent, writeOperatingCurrent } from './operating-current.js';
import { judgeResidual } from './residual-disconnection.js';
import { residualUpstream } from './residual-position.js';
import { decidingResult } from './withstand.js';

/** What a wiring code says of disconnection; the mechanics are shared. */
export interface DisconnectionFigures {
  /** Minimum voltage factor and where it stands. */
  readonly minimumVoltageFactor: readonly [value: number, by: string];
  /** Writes the required time. */
  requiredTime(sheet: Sheet, circuit: CircuitCase, system: EarthingSystem): Known<Seconds>;
  /** Current that operates a fuse. */
  readonly fuseCurrent: FuseCurrent;
  /** A note where the value lies between the computed and a printed limit. */
  printedLimit?(sheet: Sheet, circuit: CircuitCase, required: Known<Seconds>): Known<Ohms> | undefined;
}

/** The rule that an earth fault is disconnected in time, for a wiring code of the IEC family. */
export function disconnectionRule(figures: DisconnectionFigures): Rule {
  return (circuit, findings, sheet) => {
    const system = factValue('earthing system of the supply', circuit.installation.supply.system);
    if (isMissing(system)) return [sheet.result(notDetermined(automaticDisconnection, ...system.missing))];
    if (system === 'IT')
      return [
        sheet.result(
          notDetermined(automaticDisconnection, {
            kind: 'fact',
            fact: 'second fault on an IT system',
            obtain: 'not covered: IT systems are judged by their own rules',
          }),
        ),
      ];
    const isTT = system === 'TT';
    const { loopImpedance, parts } = writeLoopImpedance(sheet, circuit, system, findings);
    const requiredTime = figures.requiredTime(sheet, circuit, system);

    const byFuse = sheet.part('Overcurrent device');
    const operatingCurrent = writeOperatingCurrent(byFuse, circuit.run.device, requiredTime, figures.fuseCurrent);
    const nominalVoltage = byFuse.given('nominalVoltage', circuit.nominalVoltage);
    const minimumVoltageFactor = byFuse.given(
      'minimumVoltageFactor',
      ratio(figures.minimumVoltageFactor[0]),
      figures.minimumVoltageFactor[1],
    );
    const loopImpedanceLimit = byFuse.step(loopImpedanceLimitOf, {
      nominalVoltage,
      minimumVoltageFactor,
      operatingCurrent,
    });
    findings.loopImpedanceLimit = loopImpedanceLimit;
    const printed = figures.printedLimit?.(sheet.part('Printed limit'), circuit, requiredTime);
    const overcurrent = byFuse.check(
      overcurrentDisconnects,
      { loopImpedance, loopImpedanceLimit },
      joined(
        betweenPrints(loopImpedance, loopImpedanceLimit, printed),
        restsOnArmour([...circuit.path.feeders, circuit.run]),
      ),
    );

    const upstream = residualUpstream(circuit.path);
    if (isTT && upstream.length > 0) sheet.gather('sum', 'protectiveResistance', 'circuitProtectiveResistance', parts);
    const residual = upstream.map((device, i) => {
      const part = sheet.part(`Residual current device ${i + 1}`);
      return decidingResult(judgeResidual(part, circuit, device, isTT, loopImpedance));
    });
    const results: CheckResult[] = [sheet.check(automaticDisconnection, { results: [overcurrent, ...residual] })];
    const reliesOnResidual = overcurrent.verdict !== 'pass' && residual.some((r) => r.verdict === 'pass');
    if (isTT) results.push(stability(sheet, circuit));
    else if (overcurrent.verdict === 'not-determined' && !reliesOnResidual)
      results.push(sheet.result(notDetermined(overcurrentPreferred, ...(overcurrent.gaps ?? []))));
    else
      results.push(
        sheet.check(overcurrentPreferred, {
          holds: overcurrent.verdict === 'pass',
          because: reliesOnResidual
            ? 'Disconnection rests on a residual current device because the overcurrent device is too slow or cannot be judged.'
            : overcurrent.verdict === 'pass'
              ? 'Disconnection does not rest on a residual current device.'
              : 'The overcurrent device is too slow.',
        }),
      );
    return results;
  };
}

function stability(sheet: Sheet, circuit: CircuitCase): CheckResult {
  const electrode = circuit.installation.supply.electrode;
  if (!electrode)
    return sheet.result(
      notRequired(electrodeStable, 'not-applicable', 'No electrode of the installation is described.'),
    );
  const part = sheet.part('Earth electrode');
  const electrodeResistance = part.given('electrodeResistance', electrode.resistance);
  const electrodeStability = part.given('electrodeStability', ohms(200), 'BS 7671 411.5.3, note');
  return part.check(electrodeStable, { electrodeResistance, electrodeStability });
}

const joined = (...parts: readonly (string | undefined)[]): string | undefined => {
  const said = parts.filter((p) => p !== undefined);
  return said.length > 0 ? said.join(' ') : undefined;
};

/** The named note for a value that lies between the exact and the printed limit. */
function betweenPrints(value: Known<Ohms>, exact: Known<Ohms>, printed: Known<Ohms> | undefined): string | undefined {
  if (typeof value !== 'number' || typeof exact !== 'number' || typeof printed !== 'number') return undefined;
  const [low, high] = exact < printed ? [exact, printed] : [printed, exact];
  if (!(value > low && value <= high)) return undefined;
  return `Between exact and printed limit: ${value.toPrecision(4)} Ω lies between the computed ${exact.toPrecision(4)} Ω and the printed ${printed} Ω; the computed one decides.`;
}
