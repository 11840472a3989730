namespace SetupService.Api.Http.Contract;

/// <summary>Tells which document a change is made to.</summary>
internal interface IDocumentChangeConverter
{
    /// <summary>The type of the document.</summary>
    Type DocumentType { get; }
}
