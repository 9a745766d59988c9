using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace PanelTui.Engine;

/// <summary>Ends each switch over an enum of this program: a member that the switch does not name is a fault in it.</summary>
public static class Unnamed
{
    /// <summary>The error for a member without a case; its message names the member, its type and the switch.</summary>
    public static UnreachableException Of(Enum? member, [CallerMemberName] string place = "") =>
        new($"{place} has no case for {(member is null ? "null" : $"{member.GetType().Name}.{member}")}.");
}
