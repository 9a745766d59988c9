using CsCheck;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running.Endurance;

namespace PanelTui.Engine.Tests.Running.Endurance;

/// <summary>The state of charge over three days: energy goes nowhere, the sun is a half sine, charging keeps its band.</summary>
public class EnergyCourseTests
{
    /// <summary>What came in less what went out, in watt-hours.</summary>
    private static decimal Unaccounted(EnergyFlow flow) => flow.Sun.Value + flow.Supplied.Value - flow.Served.Value
        - flow.Spilled.Value - flow.Idle.Value - flow.Lost.Value - flow.Stored.Value;

    private static readonly Battery Twelve = new() { Usable = new WattHours(12_000), Reserve = 25.Pct, Efficiency = 88.Pct, Idle = 60.W };

    private static readonly Charging Grid = new() { Power = 3000.W, StartsAt = 50.Pct, StopsAt = 51.Pct };

    /// <summary>Derived: 5.12 kWh, 90 % of it, at 90 %, carries 600 W with 40 W idle for 6.52 h.</summary>
    [Fact]
    public void A_5_12_kWh_battery_with_a_tenth_in_reserve_carries_600_W_for_6_52_h()
    {
        var battery = new Battery { Usable = new WattHours(5120), Reserve = 10.Pct, Efficiency = 90.Pct, Idle = 40.W };
        Math.Round(battery.HoursToReserve(Percent.Whole, 600.W)!.Value.Value, 2).ShouldBe(6.52m);
    }

    [Fact]
    public void From_the_reserve_there_is_no_hour_left() =>
        Twelve.HoursToReserve(25.Pct, 600.W)!.Value.Value.ShouldBe(0);

    [Fact]
    public void With_nothing_drawn_there_is_no_hour_to_tell() =>
        (Twelve with { Idle = 0.W }).HoursToReserve(Percent.Whole, Watts.Zero).ShouldBeNull();

    [Fact]
    public void A_course_without_charging_misses_its_first_load_when_the_hours_say_so()
    {
        var course = Course(Source(Twelve), 1000);
        course.FirstMissed!.Value.Value.ShouldBe(Twelve.HoursToReserve(Percent.Whole, 1000.W)!.Value.Value, 1e-9m);
        course.Lowest.Value.ShouldBe(25, 1e-9m);
    }

    [Fact]
    public void Energy_is_conserved_to_the_watt_hour_hour_by_hour() => AnySystem.Sample(
        one =>
        {
            var course = EnergyCourse.Of(one.Schedule, one.Loads, one.From, one.Start)!;
            var before = course.From.Value;
            foreach (var hour in course.Hours)
            {
                var stored = (hour.End.Value - before) * one.Schedule.Source!.Battery!.Usable.Value / 100;
                if (Math.Abs(Unaccounted(hour.Flow)) > 1e-6m || Math.Abs(stored - hour.Flow.Stored.Value) > 1e-6m) return false;
                if (hour.Flow.Missed.Value < -1e-9m || hour.Flow.Spilled.Value < -1e-9m || hour.Flow.Lost.Value < -1e-9m) return false;
                before = hour.End.Value;
            }

            return course.Hours.Length == 72;
        },
        iter: 2000);

    [Fact]
    public void The_battery_is_never_over_full_nor_drawn_below_reserve_or_where_it_began() => AnySystem.Sample(
        one =>
        {
            var floor = Math.Min(one.From.Value, one.Schedule.Source!.Battery!.Reserve.Value);
            return EnergyCourse.Of(one.Schedule, one.Loads, one.From, one.Start)!.Hours
                .All(hour => hour.End.Value <= 100 + 1e-9m && hour.End.Value >= floor - 1e-9m);
        },
        iter: 2000);

    /// <summary>Closed form: the area under P sin(pi t / D) is 2 P D / pi, so 5 h of full sun of 2 kW are 10 kWh.</summary>
    [Fact]
    public void A_half_sine_day_brings_peak_times_hours_of_full_sun() =>
        HalfSine(2000, 5).EnergyOfDay().Value.ShouldBe(10_000, 1e-6m);

    /// <summary>Closed form of one hour, 11 to 12 of a 12 h day: P D / pi x (cos(5 pi / 12) - cos(pi / 2)).</summary>
    [Fact]
    public void An_hour_of_a_half_sine_day_is_its_exact_integral()
    {
        var sunHours = (decimal)(24 / Math.PI);
        var exact = 1000 * 12 / Math.PI * (Math.Cos(5 * Math.PI / 12) - Math.Cos(Math.PI / 2));
        ((double)HalfSine(1000, sunHours).EnergyIn(11).Value).ShouldBe(exact, 1e-6);
    }

    /// <summary>Derived: 8.256 kWh over 12 h of daylight peak at pi E / 2 D = 1.081 kW.</summary>
    [Fact]
    public void A_day_of_8_256_kWh_over_12_h_peaks_at_1_081_kW() =>
        (HalfSine(1081, (decimal)(24 / Math.PI)).EnergyOfDay().Value / 1000).ShouldBe(8.256m, 0.005m);

    [Fact]
    public void An_hourly_list_is_taken_hour_by_hour()
    {
        var solar = new Solar { Hourly = [.. Enumerable.Range(0, 24).Select(hour => hour.W)] };
        solar.EnergyIn(7).ShouldBe(new WattHours(7));
        solar.EnergyIn(25).ShouldBe(new WattHours(1));
    }

    /// <summary>Common practice, no source: charging set to hold 50 % starts at 50 % and ends at 51 %.</summary>
    [Fact]
    public void Charging_set_to_hold_half_swings_between_50_and_51_per_cent()
    {
        var course = Course(Source(Twelve) with { Charging = Grid }, 800);
        course.FirstMissed.ShouldBeNull();
        course.Lowest.Value.ShouldBeGreaterThanOrEqualTo(50 - 1e-6m);
        course.Hours.Skip(12).AtLeastOne().ShouldAllBe(hour => hour.End.Value <= 51 + 1e-6m);
    }

    [Fact]
    public void Without_the_grid_charging_does_nothing()
    {
        var source = Source(Twelve) with { Charging = Grid };
        EnergyCourse.Of(In(source), Evenly(1000), Percent.Whole, charges: false)!.Total.Supplied.ShouldBe(WattHours.Zero);
    }

    /// <summary>What runs is passed through first: of 20 A on two legs 4800 W, with 3000 W running, 1800 W are left to charge.</summary>
    [Fact]
    public void The_charger_gives_way_below_the_input_limit()
    {
        var source = Source(Twelve with { Idle = 0.W }) with { Charging = Grid with { StopsAt = Percent.Whole, InputLimit = 20.A } };
        var hour = EnergyCourse.Of(In(source), Evenly(3000), 50.Pct)!.Hours[0];
        hour.Flow.Supplied.Value.ShouldBe(4800, 1e-9m);
        hour.Flow.Stored.Value.ShouldBe(1800, 1e-9m);
    }

    /// <summary>20 A at 120 V are 2400 W a leg: of 3000 W on leg A 600 W go without, and a charger that draws on both legs has no room.</summary>
    [Fact]
    public void Room_on_the_other_leg_of_the_input_helps_neither_load_nor_charger()
    {
        var source = Source(Twelve with { Idle = 0.W }) with
        {
            Arrangement = SourceArrangement.Split,
            Charging = Grid with { StopsAt = Percent.Whole, InputLimit = 20.A },
        };
        var flow = EnergyCourse.Of(In(source), On(3000, 0), 50.Pct)!.Hours[0].Flow;
        flow.Missed.Value.ShouldBe(600, 1e-9m);
        flow.Supplied.Value.ShouldBe(2400, 1e-9m);
        flow.Stored.Value.ShouldBe(0, 1e-9m);
    }

    /// <summary>1400 W are left on A and 2400 W on B: of 3000 W the charger gets twice the smaller.</summary>
    [Fact]
    public void The_fuller_leg_of_the_input_holds_the_charger_back_on_both()
    {
        var source = Source(Twelve with { Idle = 0.W }) with { Charging = Grid with { StopsAt = Percent.Whole, InputLimit = 20.A } };
        var flow = EnergyCourse.Of(In(source), On(1000, 0), 50.Pct)!.Hours[0].Flow;
        flow.Missed.Value.ShouldBe(0);
        flow.Stored.Value.ShouldBe(2800, 1e-9m);
    }

    [Fact]
    public void A_unit_in_phase_takes_the_sum_of_the_legs_in_through_one_pole()
    {
        var source = Source(Twelve with { Idle = 0.W }) with
        {
            Arrangement = SourceArrangement.InPhase,
            Charging = Grid with { StopsAt = Percent.Whole, InputLimit = 20.A },
        };
        var flow = EnergyCourse.Of(In(source), On(2000, 1000), 50.Pct)!.Hours[0].Flow;
        flow.Missed.Value.ShouldBe(600, 1e-9m);
        flow.Supplied.Value.ShouldBe(2400, 1e-9m);
    }

    [Fact]
    public void What_a_leg_asks_beyond_its_input_is_missed_in_every_hour_of_charging() => AnySystem.Sample(
        one =>
        {
            if (one.Schedule.Source! is not { Charging: { From: not ChargingFrom.Solar, InputLimit: { } limit } charging } source) return true;
            var schedule = In(source with { Charging = charging with { StopsAt = Percent.Whole }, Battery = Never(source.Battery!) });
            var beyond = one.Loads.Values.Sum(leg => Math.Max(0, leg.Value - (limit.Value * 120)));
            return EnergyCourse.Of(schedule, one.Loads, Percent.Zero, one.Start)!.Hours
                .All(hour => Math.Abs(hour.Flow.Missed.Value - beyond) < 1e-6m);
        },
        iter: 2000);

    private static Gen<(Schedule Schedule, PerLeg<Watts> Loads, Percent From, int Start)> AnySystem => Gen.Select(
        Gen.Select(Gen.Int[1, 40_000], Gen.Int[0, 90], Gen.Int[50, 100], Gen.Int[0, 200]),
        Gen.Select(Gen.Int[0, 6000], Gen.Int[0, 95], Gen.Int[1, 5], Gen.Int[0, 60]),
        Gen.Select(Gen.Int[0, 6000], Gen.Int[0, 20], Gen.Int[0, 5000], Gen.Int[0, 5000]),
        Gen.Int[0, 100], Gen.Int[0, 23]).Select((battery, charging, sun, from, start) => (
            In(Source(new Battery
            {
                Usable = new WattHours(battery.Item1),
                Reserve = battery.Item2.Pct,
                Efficiency = battery.Item3.Pct,
                Idle = battery.Item4.W,
            }) with
            {
                Solar = sun.Item1 == 0 ? null : HalfSine(sun.Item1, sun.Item2),
                Charging = charging.Item1 == 0 ? null : new Charging
                {
                    From = (ChargingFrom)(charging.Item1 % 3),
                    Power = charging.Item1.W,
                    StartsAt = charging.Item2.Pct,
                    StopsAt = (charging.Item2 + charging.Item3).Pct,
                    Efficiency = battery.Item3.Pct,
                    InputLimit = charging.Item4 == 0 ? null : charging.Item4.A,
                },
            }),
            On(sun.Item3, sun.Item4),
            from.Pct,
            start));

    private static Solar HalfSine(int peak, decimal sunHours) => new() { Peak = peak.W, SunHours = new Hours(sunHours) };

    private static StandbySource Source(Battery battery) => new() { Kind = SourceKind.Inverters, Battery = battery };

    private static Schedule In(StandbySource source) => Sketch.Of() with { Source = source };

    private static EnergyCourse Course(StandbySource source, int load) => EnergyCourse.Of(In(source), Evenly(load), Percent.Whole)!;

    /// <summary>Too large to be filled in three days.</summary>
    private static Battery Never(Battery battery) => battery with { Usable = new WattHours(100_000_000) };

    private static PerLeg<Watts> Evenly(int load) => PerLeg.Of(PanelSystem.SplitPhase, _ => new Watts(load / 2m));

    private static PerLeg<Watts> On(int a, int b) => PerLeg.Of(PanelSystem.SplitPhase, leg => leg == Leg.A ? a.W : b.W);
}
