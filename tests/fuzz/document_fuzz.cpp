#include "core/documents/document.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>

namespace {

[[noreturn]] void broken(const char* law) {
    std::fprintf(stderr, "broken law: %s\n", law);
    std::abort();
}

} // namespace

/// Laws of the reader, for any bytes: it says yes or no; what it reads can be saved and opened
/// again as the same project and the same bytes; a refusal says why.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace frontwright;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const Result<Catalogue> catalogue = readCatalogue(bytes, "fuzz");
    if (!catalogue.ok() && catalogue.error().what.empty())
        broken("a refused catalogue says why");
    const Result<Project> read = readDocument(bytes);
    if (!read.ok()) {
        if (read.error().what.empty())
            broken("a refused document says why");
        return 0;
    }
    const std::string written = writeDocument(read.value());
    const Result<Project> again = readDocument(written);
    if (!again.ok())
        broken("what was written can be read");
    if (!(again.value() == read.value()))
        broken("read(write(p)) == p");
    if (writeDocument(again.value()) != written)
        broken("write(read(bytes)) == bytes");
    return 0;
}
