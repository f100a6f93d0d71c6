// Every sentence the pages themselves say, in one place (English). Sentences about numbers come from the server.
export const words = {
  facilityPages: {
    roster: 'Throwers',
    test_day: 'Test day',
    plan_block: 'Blocks',
    record_trace: 'Force traces',
    solve_setup: 'Set-ups',
    load_bar: 'Load a bar',
    import_records: 'Records in',
    method: 'Methods',
  } as Record<string, string>,
  pageTitles: { explain_velocity: 'What goes with velocity here', athlete_record: 'Thrower', ball_mass_line: 'Ball speed over ball mass', load_velocity: 'Bar speed over load', joint_ranges: 'Ranges of the joints', sides: 'Left and right', estimate_error: 'Errors of the tests', trace: 'Force trace', traces: 'Force traces by day', inspect_c3d: 'What a C3D file holds', describe_body: 'Body and lengths', measure_lead_leg: 'Lead leg at landing', measure_ball_throw: 'Overhead ball throw' } as Record<string, string>, // of pages that stand in no menu
  noSuchPage: 'No such page',
  noPageCalled: (page: string) => `There is no page “${page}”.`,
  backToThrowers: 'Back to the throwers',
  skip: 'Skip to the page',
  loading: 'Reading the records …',
  unreachable: 'The server does not answer. Try again when it is back.',
  stopTitle: 'When to stop and see a clinician',
  localRules: 'Usual cautions only. Local rules and licensed practice come first.',
  cannotTell: 'Cannot tell',
  noThrowers: 'No throwers yet. Bring a table of athletes under “Records in”.',
};
