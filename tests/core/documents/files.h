#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace frontwright::testing {

inline std::filesystem::path sourceFolder() {
    return FRONTWRIGHT_SOURCE_DIR;
}

inline std::string contentOf(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    EXPECT_TRUE(stream) << file;
    std::ostringstream content;
    content << stream.rdbuf();
    return content.str();
}

/// All files of that extension below a folder, sorted.
inline std::vector<std::filesystem::path> filesBelow(const std::filesystem::path& folder,
                                                     const std::string& extension) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
        if (entry.path().extension() == extension)
            files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

inline std::vector<std::filesystem::path> sampleFiles() {
    return filesBelow(sourceFolder() / "samples", ".frontwright");
}

} // namespace frontwright::testing
