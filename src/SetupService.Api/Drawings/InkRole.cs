namespace SetupService.Api.Drawings;

/// <summary>What a colour of the drawing stands for.</summary>
internal enum InkRole
{
    Paper,
    Ink,
    Soft,
    Candidate,
    Current,
    Third,
    Pass,
    Caution,
    Fail,
}
