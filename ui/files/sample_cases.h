#pragma once

#include "core/project/project.h"

#include <QStringList>

namespace frontwright {

/// A case that the program carries, to look at and to try things on.
struct SampleCase {
    QString fileName; ///< "glaze-chest.frontwright"
    Project project;
};

/// Of all of them, in the order in which they are offered; reads none.
QStringList sampleFileNames();
/// As the file under samples holds it. It is part of the program: one that can't be read is a
/// defect of it and stops it.
SampleCase readSample(const QString& fileName);

} // namespace frontwright
