using Jackwork.Checks;
using Jackwork.Tests.Motion;

namespace Jackwork.Tests.Stacks;

/// <summary>A shaft with one cam in a case, and a lever on an axle between two collars: few enough things to add up by hand.</summary>
internal static class SmallPiece
{
    /// <summary>Its design, with more parts and other lines where given.</summary>
    public static string Text(string parts = "", string cam = "", string collar = "[9, 70, -38]") => $$"""
        jackwork: 1
        title: One cam
        crank: {turns: shaft, rpm: 30, radius: 35}
        members:
          shaft:
            pivot: {through: [0, 40, 0], along: x}
            body: {from: -29, to: 46}
          lever:
            pivot: {through: [0, 70, -38], along: x}
            body: {from: -29, to: 39}
            cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}, base: 20, hub: 12, bore: 6, hub-length: 12{{cam}}}
          head:
            pivot: {through: [0, 150, 8], along: x}
            rod: {from: lever, pins: [[0, 72, 12], [0, 150, 26]]}
        timing:
          head:
            over: shaft
            moves: [{from: 10, to: 130, reach: -10}, {from: 170, to: 340, reach: rest}]
        case:
          inside: [[-20, 0, -60], [30, 120, 60]]
          board: 9
          open: [front, top]
        parts:
          behind: {tube: {from: [-9, 70, -38], to: [-3.2, 70, -38], diameter: 8, bore: 4}, material: brass}
          ahead: {tube: {from: [3.3, 70, -38], to: {{collar}}, diameter: 8, bore: 4}, material: brass}
        {{parts}}
        """;

    /// <summary>Everything worked out of it.</summary>
    public static Proof Proof(string text) => Jackwork.Checks.Proof.Of(Machines.Of(text));
}
