namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>With which use an effect on wear grows.</summary>
public enum UseShare
{
    /// <summary>With any use.</summary>
    Any,

    /// <summary>With the share of wear that comes of the track.</summary>
    Track,

    /// <summary>With the share of wear that comes of the road.</summary>
    Road,
}
