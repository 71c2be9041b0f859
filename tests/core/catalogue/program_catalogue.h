#pragma once

#include "core/documents/document.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <string>

// The catalogue that comes with the program, read from its files.
namespace frontwright::testing {

inline Catalogue readProgramFile(const std::string& name) {
    const std::string path = std::string(FRONTWRIGHT_SOURCE_DIR "/resources/catalogue/") + name;
    std::ifstream file(path, std::ios::binary);
    EXPECT_TRUE(file.is_open()) << path;
    const std::string bytes((std::istreambuf_iterator<char>(file)),
                            std::istreambuf_iterator<char>());
    const Result<Catalogue> read = readCatalogue(bytes, name);
    if (!read.ok()) {
        ADD_FAILURE() << read.error().sentence();
        return {};
    }
    return read.value();
}

inline Catalogue programCatalogue() {
    Catalogue all;
    for (const char* name : {"wood_screws.json", "bolts.json", "hardware.json", "fittings.json",
                             "runners.json", "species.json", "air.json"})
        all = merged(all, readProgramFile(name));
    return all;
}

inline Length tenths(std::int64_t n) { // of a millimetre
    return Length::fromMicrometres(n * 100);
}

} // namespace frontwright::testing
