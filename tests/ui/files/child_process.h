#pragma once

#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

namespace frontwright::testing {

/// Runs `work` in a process of its own, where limits and rights can be changed or the work be cut
/// short. The child leaves without cleaning up what belongs to its parent.
template<class Work>
pid_t startChild(Work work) {
    const pid_t child = ::fork();
    if (child == 0)
        ::_exit(work());
    return child;
}

/// What `work` returned in the child; -1 where it did not come to its end.
template<class Work>
int inChild(Work work) {
    const pid_t child = startChild(work);
    int status = 0;
    if (child < 0 || ::waitpid(child, &status, 0) != child || !WIFEXITED(status))
        return -1;
    return WEXITSTATUS(status);
}

} // namespace frontwright::testing
