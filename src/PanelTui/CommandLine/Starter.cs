namespace PanelTui.CommandLine;

/// <summary>The commented schedule that `paneltui new` writes.</summary>
internal static class Starter
{
    public const string Text = """
        # yaml-language-server: $schema=panel.schema.json
        # The line above is for text editors; `paneltui schema > panel.schema.json` writes that file.
        # The schedule of one standby panel. Quantities carry their unit: 20 A, 1.5 kW, 60 ft.
        # Open it with `paneltui FILE`; `paneltui check FILE` tells what to look at.
        # It does not replace the code in force, the authority having jurisdiction or licensed practice.
        schedule: 1

        panel:
          name: My standby panel
          location: ""                  # where it hangs
          system: 120/240 V 1ph 3W      # or: 120 V 1ph 2W, 120/208 V 1ph 3W, 208Y/120 V 3ph 4W
          spaces: 12                    # odd on the left, even on the right
          bus: 100 A
          main: 50 A                    # or lugs
          # tandem_spaces: [11, 12]     # where the label allows tandem breakers
          neutral_bonded: no            # a bond belongs at the service alone

        code:
          edition: 2023                 # 2017, 2020 or 2023: which one is in force where you are?
          occupancy: dwelling           # or non-dwelling

        demand:
          method: selected              # what you choose to run (702.4); docs/format.md names five more

        feeder:                         # from the transfer equipment to this panel
          ocpd: 50 A
          conductor: 6 AWG Cu
          length: 20 ft

        transfer:
          kind: manual                  # or automatic, interlock
          rating: 50 A

        source:
          kind: generator               # or inverters
          continuous: 9.6 kW            # in all; inverters state continuous_per_leg
          surge: 12 kVA
          outlet: 14-50
          ocpd: 50 A
          neutral: floating             # or bonded: see the nameplate

        circuits:
          - id: lights                  # a short name for scenarios; optional
            space: 1
            name: Hall and stair lights
            breaker: 15 A
            loads:
              - {kind: lighting, rating: 300 W}
          - id: fridge
            space: 3
            name: Kitchen refrigerator
            breaker: 20 A
            loads:
              - {kind: appliance, rating: 6 A, running: 180 W, duty: 35 %}
          - id: pump
            space: 2
            name: Well pump
            breaker: 20 A
            poles: 2
            loads:
              - {kind: motor, rating: 1/2 hp, running: 750 W, duty: 10 %}

        scenarios:
          - name: Outage, evening
            running: all

        """;
}
