#pragma once

#include "core/project/project.h"

#include <QString>

#include <vector>

namespace frontwright {

/// A case that the program carries, to look at and to try things on.
struct SampleCase {
    QString fileName; ///< "glaze-chest.frontwright"
    Project project;
};

/// All of them, as the files under samples hold them. They are part of the program: one that can't
/// be read is a defect of it and stops it.
std::vector<SampleCase> sampleCases();

} // namespace frontwright
