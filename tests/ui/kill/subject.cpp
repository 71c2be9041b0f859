// Edits and saves a case without end, to be killed at any moment: subject CASE STATE LOG SEED.
// Every edit writes its number into the title.

#include "tests/ui/kill/subject.h"

#include "ui/files/built_in_catalogue.h"
#include "ui/window/recovery.h"

#include <QCoreApplication>

#include <cstdlib>
#include <fcntl.h>
#include <random>
#include <string>
#include <thread>
#include <unistd.h>

using namespace frontwright;
using namespace frontwright::testing;

namespace {

class Log {
public:
    explicit Log(const char* path) : m_fd(::open(path, O_WRONLY | O_APPEND | O_CREAT, 0600)) {}
    void add(char what, int number) const {
        const auto now = std::chrono::duration_cast<std::chrono::milliseconds>(
            std::chrono::steady_clock::now().time_since_epoch());
        const std::string line = std::string(1, what) + ' ' + std::to_string(number) + ' ' +
                                 std::to_string(now.count()) + '\n';
        if (::write(m_fd, line.data(), line.size()) < 0)
            std::abort();
    }

private:
    int m_fd;
};

Project numbered(Project project, int number) {
    project.title = std::to_string(number);
    return project;
}

} // namespace

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    Session session(builtInCatalogue());
    CaseFile file(session);
    const Recovery recovery(session, file, arguments.at(2), {subjectIdle, subjectMost});
    if (file.open(arguments.at(1)))
        return subjectNotOpened;
    // Whoever had it is dead: the lock has to have been taken over.
    if (file.isReadOnly())
        return subjectNotOwner;
    const Log log(argv[3]);
    std::minstd_rand random(static_cast<unsigned>(arguments.at(4).toInt()));
    int number = std::atoi(session.project().title.c_str());
    log.add(logOpened, number);
    for (;;) {
        log.add(logTurn, number);
        QCoreApplication::processEvents();
        switch (random() % 8) {
        case 0:
            log.add(logSaving, number);
            if (file.save())
                return subjectNotSaved;
            log.add(logSaved, number);
            break;
        case 1:
        case 2:
        case 3:
            ++number;
            session.apply(QStringLiteral("Edit"), numbered(session.project(), number));
            log.add(logEdit, number);
            break;
        default:
            std::this_thread::sleep_for(std::chrono::microseconds(random() % 3'000));
        }
    }
}
