#include "core/documents/catalogue_forms.h"
#include "core/documents/document.h"
#include "core/documents/header.h"
#include "core/documents/reading.h"

namespace frontwright {

namespace {

using namespace documents;

/// Our own files: a member that is not known is a slip of the pen, not a newer version's.
Result<Catalogue> readEntries(const JsonTree& tree) {
    ReadState state(tree);
    Catalogue catalogue;
    Reading object({state, tree.root(), nullptr, nullptr});
    object.take("format");
    object.take("version");
    object.take("note");
    members(object, catalogue);
    object.finish();
    if (state.error)
        return std::move(*state.error);
    return catalogue;
}

Result<Catalogue> readCatalogueText(std::string_view bytes) {
    const Result<JsonTree> tree = JsonTree::read(bytes);
    if (!tree.ok())
        return tree.error();
    const Result<Version> version =
        readHeader(tree.value(), catalogueFormat, {documentMajor, documentMinor});
    if (!version.ok())
        return version.error();
    return readEntries(tree.value());
}

} // namespace

Result<Catalogue> readCatalogue(std::string_view bytes, std::string_view fileName) {
    Result<Catalogue> catalogue = readCatalogueText(bytes);
    if (catalogue.ok())
        return catalogue;
    Error error = catalogue.error();
    const std::string name(fileName);
    error.place = error.place.empty() ? Phrase(name) : phrase("%1, %2", name, error.place);
    return error;
}

} // namespace frontwright
