import { percent } from '../../../../shared-types/figures.ts';
import type { GradeShare } from '../../../../shared-types/track.ts';
import { axisLooks } from '../../../parts/charts/axis-looks.ts';
import type { Drawing } from '../../../parts/charts/drawing.ts';
import type { Figure } from '../../../parts/charts/figure.ts';
import type { LegendEntry } from '../../../parts/charts/legend.ts';
import type { Palette } from '../../../parts/charts/palette.ts';

/** No steeper than this either way is level, and a climb steeper than the other is steep, % (common practice, no source). */
const levelPct = 1;
const steepPct = 6;
/** Less than this is rounding, not a finding, share of the distance. */
const worthSaying = 0.005;

const shareLabel = 'Distance';
const legend: readonly LegendEntry[] = [{ label: shareLabel, colour: '--wall', mark: 'bar', dash: [] }];

/** How much of the way climbs and falls, and how steeply. */
export function gradeFigure(grades: readonly GradeShare[], locale?: string): Figure {
  return {
    title: gradeFinding(grades, locale),
    subtitle: `Share of the distance by grade, %; uphill is above 0. Level: no steeper than ${gradeText(levelPct, locale)} either way.`,
    fileName: 'grades',
    legend,
    table: () => ({
      columns: ['Grade, %', `${shareLabel}, %`],
      rows: grades.map(({ gradePct, share }) => [gradePct, share * 100]),
    }),
    draw: (palette) => drawGrades(grades, palette, locale),
  };
}

function gradeText(gradePct: number, locale?: string): string {
  return percent(gradePct / 100, { digits: 1, locale });
}

export function gradeFinding(grades: readonly GradeShare[], locale?: string): string {
  const sum = (holds: (gradePct: number) => boolean): number =>
    grades.reduce((total, { gradePct, share }) => total + (holds(gradePct) ? share : 0), 0);
  const level = sum((gradePct) => Math.abs(gradePct) <= levelPct);
  if (1 - level < worthSaying) return 'All of the way is level';
  const levelText = `${percent(level, { locale })} of the way is level`;
  const steep = sum((gradePct) => gradePct > steepPct);
  if (steep >= worthSaying) {
    return `${levelText}, ${percent(steep, { locale })} climbs at more than ${gradeText(steepPct, locale)}`;
  }
  const steepest = Math.max(
    0,
    ...grades.filter(({ share }) => share >= worthSaying).map((each) => each.gradePct),
  );
  return `${levelText}, no climb is steeper than ${gradeText(Math.max(steepest, levelPct), locale)}`;
}

/** The distance by whole per cent of grade, with the grades between that are not ridden. */
export function gradeBars(grades: readonly GradeShare[]): readonly GradeShare[] {
  const whole = grades.map(({ gradePct }) => Math.round(gradePct));
  const least = Math.min(...whole);
  const most = Math.max(...whole);
  if (grades.length === 0) return [];
  return Array.from({ length: most - least + 1 }, (_, place) => {
    const gradePct = least + place;
    const share = grades.reduce((sum, each, at) => sum + (whole[at] === gradePct ? each.share : 0), 0);
    return { gradePct, share };
  });
}

function drawGrades(grades: readonly GradeShare[], palette: Palette, locale?: string): Drawing {
  const axes = axisLooks(palette);
  const bars = gradeBars(grades);
  return {
    type: 'bar',
    data: {
      labels: bars.map(({ gradePct }) => percent(gradePct / 100, { signed: true, locale })),
      datasets: [
        {
          type: 'bar',
          label: shareLabel,
          data: bars.map(({ share }) => share * 100),
          backgroundColor: palette('--wall'),
          categoryPercentage: 0.9,
          barPercentage: 0.95,
        },
      ],
    },
    options: {
      ...axes.options,
      scales: { x: axes.x, y: { ...axes.y, min: 0 } },
      plugins: {
        tooltip: {
          callbacks: {
            label: ({ parsed }) =>
              `${percent((parsed.y ?? Number.NaN) / 100, { digits: 1, locale })} of the distance`,
          },
        },
      },
    },
  };
}
