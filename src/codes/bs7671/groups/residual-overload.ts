import { by, choose, compare, each, fact, open, same, sum, weigh, when } from '../../../calculation/index.js';
import { type Gap, isMissing, known, unknown } from '../../../core/index.js';
import { ofResidualUpstream, type ResidualUpstreamPlace } from '../../iec-family/places.js';
import { isPartOfBreaker, limitsOf } from '../../iec-family/residual-places.js';
import * as c from '../residual-checks.js';

const behindAsked: Gap = {
  kind: 'fact',
  fact: 'circuits behind the residual current device',
  obtain: 'list every circuit that leaves the board, and say that the list is complete',
};

/** What a residual current device carries at most: what the device ahead lets through, or the devices below together. */
export const residualLoad = () => ({
  residualRatedCurrent: ofResidualUpstream(
    ({ device }) => device.ratedCurrent ?? unknown('the marking of the device'),
    {
      called: 'rated current of the residual current device',
    },
  ),
  aheadRating: fact((place: ResidualUpstreamPlace) => limitsOf(place).ahead.rating, {
    called: (place) => limitsOf(place).aheadName,
  }),
  limitedAheadAlone: ofResidualUpstream((place) => limitsOf(place).boards.length === 0),
  allBehindListed: ofResidualUpstream((place) =>
    limitsOf(place).boards.every(({ complete }) => complete?.state === 'known' && complete.value),
  ),
  servedRating: when('allBehindListed', sum('servedRuns/deviceRating'), open(behindAsked)),
  // where one of the two is not known, the other decides only if it is small enough
  loadLimitedBy: weigh(
    ['residualRatedCurrent', 'aheadRating', 'servedRating', 'limitedAheadAlone'],
    ({ residualRatedCurrent: carries, aheadRating: ahead, servedRating: served, limitedAheadAlone: alone }) => {
      if (alone === true) return 'the device ahead';
      if (isMissing(carries)) return 'both';
      if (isMissing(served) && !isMissing(ahead) && ahead <= carries) return 'the device ahead';
      return isMissing(ahead) && !isMissing(served) && served <= carries ? 'the devices below' : 'both';
    },
    { direction: { residualRatedCurrent: 1, aheadRating: -1, servedRating: -1 } },
  ),
  residualLoad: choose('loadLimitedBy', {
    both: by(c.residualLoadOf, '536.4'),
    'the device ahead': same('aheadRating'),
    'the devices below': same('servedRating'),
  }),
});

/** No device upstream is overloaded, but where it is part of a circuit-breaker. */
export const notOverloaded = () =>
  each(
    'residualUpstream',
    [
      compare(c.residualNotOverloaded, {
        applies: ofResidualUpstream<true | string>(({ device: { overloadDeclared: says } }) =>
          known(
            says?.state === 'known' && says.value ? 'Its maker declares it protected by the devices around it.' : true,
          ),
        ),
      }),
    ],
    (place: ResidualUpstreamPlace) => !isPartOfBreaker(place),
  );
