import type {Survey} from '../survey/survey.ts'

/**
 * A survey as JSON, with a newline at its end: `format` is `renotate-survey`, `version` 1, and the fields are those of
 * `Survey`. Transpositions are in steps and semitones, octaves included, added to written to get sounding; confidences
 * run from 0 to 1; pitches are texts (`Bb3`) with their key numbers beside them; measures are numbers as printed.
 */
export function formatSurveyJson(survey: Survey): string {
  return `${JSON.stringify(survey, undefined, 2)}\n`
}
