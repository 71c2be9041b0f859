#pragma once

#include <filesystem>
#include <string>
#include <vector>

// The finished program, run as a maker's shell runs it.
namespace frontwright::testing {

struct Outcome {
    int code = -1; ///< exit code; -1 where the program did not end by itself
    std::string out;
    std::string err;
};

/// An empty folder that goes away with it.
class Folder {
public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    [[nodiscard]] std::filesystem::path path(const std::string& name) const {
        return m_path / name;
    }
    /// Writes a file into it and gives its path.
    [[nodiscard]] std::string with(const std::string& name, const std::string& content) const;
    /// Names of everything that lies in it, sorted, folders too.
    [[nodiscard]] std::vector<std::string> names() const;

private:
    std::filesystem::path m_path;
};

/// Runs the program in `folder` without any display.
Outcome ran(const Folder& folder, const std::vector<std::string>& arguments);

std::string bytesOf(const std::filesystem::path& file);
/// Paths of all sample cases, sorted.
std::vector<std::string> samplePaths();
/// Path of the sample of that name.
std::string sample(const std::string& name);

} // namespace frontwright::testing
