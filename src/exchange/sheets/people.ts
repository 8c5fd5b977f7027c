import type { SheetForm } from './sheet-form.ts'

export const people: SheetForm = {
  kind: 'people',
  name: 'People',
  says: 'Who works, what they can do, and how many hours a week.',
  called:
    'people, staff, workers, team, hands, labour, employees, personal, mitarbeiter, leute, personnel, equipe, salaries, personas, trabajadores, empleados, persone, operai, pessoal, personeel, medewerkers',
  fields: [
    {
      id: 'person',
      name: 'Person',
      says: 'name',
      words:
        'person, name, worker, employee, staff, first name, who, mitarbeiter, vorname, nom, prenom, salarie, nombre, persona, trabajador, nome, operaio, naam, medewerker',
      form: 'text',
      needed: true,
      example: 'Maren',
    },
    {
      id: 'skills',
      name: 'Can do',
      says: 'grafting, budding, cuttings, layering, seed, potting, general',
      words:
        'can do, skills, skill, tasks, work, role, does, kann, konnen, fahigkeiten, aufgaben, tatigkeit, competences, taches, habilidades, tareas, sabe, competenze, mansioni, vaardigheden, taken',
      form: 'text',
      example: 'grafting, budding, general',
    },
    {
      id: 'hours',
      name: 'Hours a week',
      says: 'otherwise 38',
      words:
        'hours a week, hours, hours per week, weekly hours, h week, hrs, stunden, wochenstunden, std, heures, heures par semaine, horas, horas semanales, ore, ore settimanali, uren, uren per week',
      form: 'number',
      example: 32,
    },
    {
      id: 'overtime',
      name: 'Overtime a week',
      says: 'hours more, at most; otherwise none',
      words:
        'overtime a week, overtime, extra hours, overtime hours per week, uberstunden, heures sup, heures supplementaires, horas extra, straordinari, overuren',
      form: 'number',
      example: 6,
    },
    {
      id: 'pace',
      name: 'Pace',
      says: '1 is the usual pace, 0.5 takes twice as long',
      words: 'pace, speed, tempo, leistung, rythme, vitesse, ritmo, velocidad, velocita, snelheid',
      form: 'number',
      example: 1,
    },
    {
      id: 'away',
      name: 'Days away',
      says: 'first to last day; several parted by semicolons',
      words:
        'days away, away, holiday, holidays, leave, vacation, absence, absences, urlaub, abwesend, abwesenheit, conges, vacances, vacaciones, ausencias, dias de ausencia, ferie, assenze, ferias, vakantie, afwezig',
      form: 'days',
      example: '2027-08-02 to 2027-08-13',
    },
  ],
}
