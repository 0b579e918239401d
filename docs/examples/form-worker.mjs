// Plans what the page has read. A worker has no import map: it imports the built files by their place.
import { inGreatBritain } from '../../dist/great-britain.js';
import { planOf } from '../../dist/site.js';

const words = {
  pass: 'Yes, it can be done',
  conditional: 'Yes, once it is confirmed on site',
  'not-determined': 'Not decided yet',
  fail: 'Not like this',
};

function tell({ number, survey, questions }, remedies) {
  // permitted lengths and limits of conditions take many assessments; the page does not show them
  const quick = { lengths: false, limits: false, sheets: 'none', remedies };
  const [option] = planOf(survey, { ...inGreatBritain(survey.code.edition), ...quick }).options;
  const { cable, device } = option.points[0].run;
  const size = cable.area.state === 'known' ? `${cable.area.value} mm²` : 'size open';
  const rating = device.rating.state === 'known' ? `${device.rating.value} A` : 'rating open';
  postMessage({
    number,
    questions,
    verdict: words[option.overall.verdict],
    title: option.title,
    work: `${cable.construction.replaceAll('-', ' ')}, ${size}; ${rating}; ${option.hours.typical.toFixed(1)} h.`,
    facts: option.unknown.filter((u) => u.decides).map((u) => u.role ?? u.fact),
  });
  return option.overall.verdict;
}

// only the latest question counts: what arrived meanwhile replaces it
let latest;
let planning = false;

function next() {
  if (!latest) {
    planning = false;
    return;
  }
  planning = true;
  const question = latest;
  latest = undefined;
  const verdict = tell(question, false);
  // what could be put right is sought once nobody types, and where something is wrong
  setTimeout(() => {
    if (!latest && verdict === 'fail') tell(question, true);
    setTimeout(next);
  }, 200);
}

addEventListener('message', ({ data }) => {
  latest = data;
  if (!planning) {
    planning = true;
    setTimeout(next);
  }
});
