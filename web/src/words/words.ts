// Every sentence the pages themselves say, in one place (English). Sentences about numbers come from the server.
export const words = {
  facilityPages: {
    roster: 'Throwers',
    check_staff: 'Who may throw',
    test_day: 'Test day',
    plan_block: 'Blocks',
    record_trace: 'Force traces',
    solve_setup: 'Set-ups',
    load_bar: 'Load a bar',
    import_records: 'Records in',
    method: 'Methods',
  } as Record<string, string>,
  pageTitles: { pitch_rules: 'Pitch rules', growth: 'Growth', plan_ramp: 'Back to throwing', check_plan: 'Everything planned, checked anew', check_arm: 'The arm', stop_and_refer: 'Stop signs', record_throws: 'Write down throws', record_practice: 'After practice', explain_velocity: 'What goes with velocity here', check_calibration: 'Were the intervals right here?', priors: 'What is believed before the records', athlete_record: 'Thrower', kit: 'What stands in the gym', load_racks: 'Racks at once', compare_blocks: 'Two blocks side by side', plan_squad: 'A block for everybody', retarget_block: 'A block in another gym', judge_block: 'Did the block do more than foretold?', next_test: 'Which test next?', plan_next_session: 'What to lift next', import_block: 'A block of your own', ball_mass_line: 'Ball speed over ball mass', load_velocity: 'Bar speed over load', joint_ranges: 'Ranges of the joints', sides: 'Left and right', estimate_error: 'Errors of the tests', trace: 'Force trace', traces: 'Force traces by day', inspect_c3d: 'What a C3D file holds', describe_body: 'Body and lengths', measure_lead_leg: 'Lead leg at landing', measure_ball_throw: 'Overhead ball throw' } as Record<string, string>, // of pages that stand in no menu
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
