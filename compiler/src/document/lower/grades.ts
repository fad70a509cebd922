// Grades and classes of a fluid or supply as they stand on its container: `SAE 75W-90, API GL-5`.
import { clausesOf, type Thing } from '@baywright/language';

const GRADES = ['SAE', 'API', 'DOT', 'ACEA', 'ISO', 'NLGI', 'ASTM', 'refrigerant'] as const;

export function gradeText(thing: Thing): string {
  return GRADES.flatMap((word) =>
    clausesOf(thing, word).map(({ clause }) => {
      const value = clause.raw?.text ?? '?';
      return word === 'refrigerant' ? value : `${word} ${value}`;
    }),
  ).join(', ');
}
