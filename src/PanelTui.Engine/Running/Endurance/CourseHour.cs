using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>One hour of a course.</summary>
/// <param name="Hour">Counted from the beginning of the course, from 0.</param>
/// <param name="OfDay">The hour of the day at which it begins, 0 to 23.</param>
/// <param name="Flow">What came in and went out.</param>
/// <param name="End">The state of charge at its end.</param>
/// <param name="Charged">Whether the grid or the generator charged in it.</param>
public sealed record CourseHour(int Hour, int OfDay, EnergyFlow Flow, Percent End, bool Charged);
