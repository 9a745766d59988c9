using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>Where outlets need ground-fault and arc-fault protection, edition by edition.</summary>
public class ProtectedPlacesTests
{
    /// <summary>
    /// As seen in a municipal code (ecode360.com 27891398), a trade forum on 2020 (forums.mikeholt.com, thread 2538913) and a
    /// contractor's article on 2023 (marselectric.com).
    /// </summary>
    [Theory]
    [InlineData("bathroom", "bathroom", "bathroom", "bathroom")]
    [InlineData("outdoors", "outdoors", "outdoors", "outdoors")]
    [InlineData("basement", "basement (where unfinished)", "basement", "basement")]
    [InlineData("kitchen", "kitchen (countertop)", "kitchen (countertop)", "kitchen")]
    [InlineData("laundry", "laundry", "laundry", "laundry")]
    [InlineData("damp", null, "damp", "damp")]
    [InlineData("bedroom", null, null, null)]
    public void A_dwelling_lists_a_place_in_2017_2020_and_2023(string place, string? in2017, string? in2020, string? in2023) =>
        Editions(GroundFaultPlaces.OfDwellings, place).ShouldBe([in2017, in2020, in2023]);

    /// <summary>From memory.</summary>
    [Theory]
    [InlineData("service-bay", "service-bay", "service-bay", "service-bay")]
    [InlineData("basement", "basement (where unfinished)", "basement (where unfinished)", "basement (where unfinished)")]
    [InlineData("laundry", null, "laundry", "laundry")]
    [InlineData("damp", null, "damp", "damp")]
    [InlineData("office", null, null, null)]
    public void Other_buildings_list_a_place_from_memory(string place, string? in2017, string? in2020, string? in2023) =>
        Editions(GroundFaultPlaces.OfOthers, place).ShouldBe([in2017, in2020, in2023]);

    /// <summary>As seen in two training articles (serveacademy.it; electricallicenserenewal.com): the same rooms in all editions.</summary>
    [Fact]
    public void Twelve_kinds_of_rooms_need_arc_fault_protection() =>
        ArcFaultRooms.All.Select(room => room.Place).ShouldBe(
        [
            "kitchen", "family-room", "dining-room", "living-room", "library", "den", "bedroom", "sunroom", "recreation-room",
            "closet", "hallway", "laundry",
        ]);

    [Theory]
    [InlineData(CodeEdition.Nec2017, "NEC 2017 210.12(A)")]
    [InlineData(CodeEdition.Nec2020, "NEC 2020 210.12(A)")]
    [InlineData(CodeEdition.Nec2023, "NEC 2023 210.12(B)")]
    public void The_rooms_stand_in_another_letter_in_2023(CodeEdition edition, string cite) =>
        $"{ArcFaultRooms.Section.In(edition)}".ShouldBe(cite);

    [Fact]
    public void What_rests_on_memory_says_so() =>
        $"{GroundFaultPlaces.OtherThanDwelling.In(CodeEdition.Nec2023)}".ShouldBe("NEC 2023 210.8(B), from memory");

    private static IEnumerable<string?> Editions(ImmutableArray<PlaceRow> rows, string place) =>
        Enum.GetValues<CodeEdition>().Select(edition =>
            rows.FirstOrDefault(row => row.Place == place && row.Since <= edition)?.In(edition));
}
