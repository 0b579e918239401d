// Plans what the page has read. A worker has no import map: it imports the built files by their place.
import { inGreatBritain } from '../../dist/great-britain.js';
import { planOf } from '../../dist/site.js';

const words = { pass: 'Yes, it can be done', 'not-determined': 'Not decided yet', fail: 'Not like this' };

// only the latest question counts: what arrived meanwhile replaces it
let latest;
let planning = false;

function plan() {
  const { number, survey, questions } = latest;
  latest = undefined;
  // permitted lengths take many assessments; the page does not show them
  const [option] = planOf(survey, { ...inGreatBritain(survey.code.edition), lengths: false, sheets: 'none' }).options;
  const { cable, device } = option.points[0].run;
  const size = cable.area.state === 'known' ? `${cable.area.value} mm²` : 'size open';
  const rating = device.rating.state === 'known' ? `${device.rating.value} A` : 'rating open';
  postMessage({
    number,
    questions,
    verdict: words[option.overall.verdict] ?? option.overall.verdict,
    title: option.title,
    work: `${cable.construction.replaceAll('-', ' ')}, ${size}; ${rating}; ${option.hours.typical.toFixed(1)} h.`,
    facts: option.unknown.filter((u) => u.decides).map((u) => u.role ?? u.fact),
  });
  planning = false;
  if (latest) next();
}

function next() {
  planning = true;
  setTimeout(plan);
}

addEventListener('message', ({ data }) => {
  latest = data;
  if (!planning) next();
});
