namespace Handwheel.Trade.Joints;

/// <summary>Pressure, stress and force of a press or shrink fit.</summary>
/// <param name="PressureMPa">Pressure between the parts, MPa.</param>
/// <param name="HubHoopMPa">Hoop stress at the bore of the hub, MPa (pull).</param>
/// <param name="ShaftHoopMPa">Hoop stress at the bore of a hollow shaft, or all through a solid one, MPa (negative: squeeze).</param>
/// <param name="PushN">Force to press it on or off, N.</param>
/// <param name="TorqueNmm">Torque it passes before it slips, N mm.</param>
public readonly record struct PressFit(double PressureMPa, double HubHoopMPa, double ShaftHoopMPa, double PushN, double TorqueNmm);
